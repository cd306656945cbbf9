import type { Shelf } from '../../../src/state/shelf/createShelf.ts'
import { createShelf } from '../../../src/state/shelf/createShelf.ts'
import { memoryShelf } from '../../../src/state/shelf/memoryShelf.ts'
import type { ShelfParts } from '../../../src/state/shelf/shelf.ts'
import type { ShelfPort } from '../../../src/state/shelf/shelfPort.ts'
import type { PierStore } from '../../../src/state/store.ts'
import { freshStore, memoryStorage } from '../freshStore.ts'

/** A store that refuses, waits or lies as it is told; nothing is told at first. */
export const troubledPort = (inner: ShelfPort = { ...memoryShelf(), kind: 'browser' }) => {
  const trouble: { before: (() => Promise<void>) | null; get: ShelfPort['get'] | null } = { before: null, get: null }
  const port: ShelfPort = {
    kind: inner.kind,
    list: async () => {
      await trouble.before?.()
      return inner.list()
    },
    get: async (id) => {
      await trouble.before?.()
      return (trouble.get ?? inner.get)(id)
    },
    put: async (record, expected) => {
      await trouble.before?.()
      return inner.put(record, expected)
    },
    remove: async (id, expected) => {
      await trouble.before?.()
      return inner.remove(id, expected)
    },
  }
  return { port, trouble }
}

let ids = 0
/** A shelf with parts of its own; the clock rises by a second at each look. */
export const freshShelf = (change: Partial<ShelfParts> = {}): Readonly<{ shelf: Shelf; pier: PierStore; parts: ShelfParts }> => {
  let clock = 1_700_000_000_000
  const pier = freshStore()
  const parts: ShelfParts = {
    pier,
    port: { ...memoryShelf(), kind: 'browser' },
    memory: memoryShelf,
    storage: memoryStorage(),
    tab: { id: 'own', live: async () => new Set(['own']) },
    now: () => {
      clock += 1000
      return clock
    },
    newId: () => `id${++ids}`,
    persist: null,
    limit: 60_000,
    ...change,
  }
  return { shelf: createShelf(parts), pier: parts.pier, parts }
}
