import { ready } from '../../../src/core/documents/documentKind.ts'
import { pierKind } from '../../../src/core/documents/pier.ts'
import type { PierDocument } from '../../../src/core/model/spec.ts'
import { pierHolder } from '../../../src/state/pierHolder.ts'
import type { ShelfParts } from '../../../src/state/storage/desk.ts'
import { memoryShelf, type ShelfPort } from '../../../src/state/storage/port.ts'
import { recordOf, type ShelfRecord } from '../../../src/state/storage/record.ts'
import { createShelf, type Shelf } from '../../../src/state/storage/shelf.ts'
import type { PierStore } from '../../../src/state/store.ts'
import { freshStore, memoryStorage } from '../freshStore.ts'

export const pier = await ready(pierKind)

type Facts = Pick<ShelfRecord, 'id' | 'revision' | 'made' | 'changed'>
export const pierRecord = (document: PierDocument, facts: Facts): ShelfRecord => recordOf(pier, document, facts)

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
  const store = freshStore()
  const parts: ShelfParts = {
    holder: pierHolder(store),
    others: [],
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
  return { shelf: createShelf(parts), pier: store, parts }
}
