import { createShelf, type Shelf } from '../../state/storage/shelf.ts'
import { idbShelf } from '../../state/storage/idbShelf.ts'
import { newId } from '../../state/document/opened.ts'
import { pierHolder } from '../../state/pierHolder.ts'
import { memoryShelf, patience } from '../../state/storage/port.ts'
import { storageOf, tabOf } from '../../state/storage/session.ts'
import { pierStore } from '../../state/store.ts'

let made: Shelf | null = null

/** The one shelf of the running page; made when it is first looked at. */
export const pageShelf = (): Shelf => {
  if (made) return made
  const shelf = createShelf({
    holder: pierHolder(pierStore),
    others: [],
    port: idbShelf({ tell: (code) => shelf.heard(code), settled: (code) => shelf.unheard(code) }),
    memory: memoryShelf,
    storage: storageOf(),
    tab: tabOf(pierStore) ?? { id: newId(), live: async () => null },
    now: Date.now,
    newId,
    persist: navigator.storage?.persist ? () => navigator.storage.persist() : null,
    limit: patience,
  })
  made = shelf
  return shelf
}
