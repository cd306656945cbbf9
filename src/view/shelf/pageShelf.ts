import { createShelf, type Shelf } from '../../state/shelf/createShelf.ts'
import { idbShelf } from '../../state/shelf/idbShelf.ts'
import { memoryShelf } from '../../state/shelf/memoryShelf.ts'
import { patience } from '../../state/shelf/patience.ts'
import { storageOf, tabOf } from '../../state/start.ts'
import { pierStore } from '../../state/store.ts'
import { newId } from '../../state/tab.ts'

let made: Shelf | null = null

/** The one shelf of the running page; made when it is first looked at. */
export const pageShelf = (): Shelf => {
  if (made) return made
  const shelf = createShelf({
    pier: pierStore,
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
