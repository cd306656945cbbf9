import { mayRemove, mayReplace, type ShelfPort } from './shelfPort.ts'
import { recordVersion } from './shelfRecord.ts'

/** Keeps piers for as long as the page lives: where the browser keeps nothing, all else still works. */
export const memoryShelf = (): ShelfPort => {
  const kept = new Map<string, unknown>()
  return {
    kind: 'memory',
    list: async () => [...kept.values()],
    get: async (id) => kept.get(id),
    put: async (record, expected) => {
      const may = mayReplace(kept.get(record.id), expected, recordVersion)
      if (may === 'done') kept.set(record.id, structuredClone(record))
      return may
    },
    remove: async (id, expected) => {
      const may = mayRemove(kept.get(id), expected, recordVersion)
      if (may === 'done') kept.delete(id)
      return may
    },
  }
}
