import { valueIn } from './stored.ts'

/** Version of a record. A page that meets a higher one shows what it can and writes nothing over it. */
export const recordVersion = 1

/** Why a store did not do what it was asked. */
export type TroubleCode =
  /** No room left. */
  | 'full'
  /** The browser keeps nothing for this page: private window, blocked, or no such store. */
  | 'blocked'
  /** No answer within the time that anybody would wait. */
  | 'hanging'
  /** Another tab holds an old version of the store open. */
  | 'held'
  /** The store was made over by a newer version of this tool: it is only read from now on. */
  | 'newer'
  /** The connection broke, and broke again. */
  | 'lost'
  | 'unknown'

export class ShelfTrouble extends Error {
  override name = 'ShelfTrouble'
  constructor(
    readonly code: TroubleCode,
    override readonly cause?: unknown,
  ) {
    super(`${code}: ${cause instanceof Error ? `${cause.name} ${cause.message}` : String(cause ?? '')}`)
  }
}

/** What became of a writing. `changed`: not the revision that was expected; `gone`: not there any more; `newer`: of a later version. */
export type Written = 'done' | 'changed' | 'gone' | 'newer'

/** A place that keeps records by id. Every promise may be refused with a `ShelfTrouble`. */
export type ShelfPort = Readonly<{
  kind: 'browser' | 'memory'
  list: () => Promise<readonly unknown[]>
  get: (id: string) => Promise<unknown>
  /**
   * Looks at the record's revision and writes in one transaction, or does not write.
   * @param expected revision that must be there; null when nothing may be there
   */
  put: (record: Readonly<{ id: string }>, expected: number | null) => Promise<Written>
  /** Removes a record of the expected revision; null removes whatever is there, but nothing of a later version. */
  remove: (id: string, expected: number | null) => Promise<Written>
}>

/** Revision of whatever lies there; NaN when it has none. */
export const revisionOf = (raw: unknown): number => {
  const revision = valueIn(raw, 'revision')
  return typeof revision === 'number' ? revision : Number.NaN
}
const isNewer = (raw: unknown): boolean => {
  const schema = valueIn(raw, 'schema')
  return typeof schema === 'number' && schema > recordVersion
}

/** May `there` give way? The one rule of both stores. */
export const mayReplace = (there: unknown, expected: number | null): Written => {
  if (there === undefined) return expected === null ? 'done' : 'gone'
  if (isNewer(there)) return 'newer'
  return expected !== null && revisionOf(there) === expected ? 'done' : 'changed'
}
export const mayRemove = (there: unknown, expected: number | null): Written => {
  if (there === undefined) return 'gone'
  if (isNewer(there)) return 'newer'
  return expected === null || revisionOf(there) === expected ? 'done' : 'changed'
}

/** Keeps piers for as long as the page lives: where the browser keeps nothing, all else still works. */
export const memoryShelf = (): ShelfPort => {
  const kept = new Map<string, unknown>()
  return {
    kind: 'memory',
    list: async () => [...kept.values()],
    get: async (id) => kept.get(id),
    put: async (record, expected) => {
      const may = mayReplace(kept.get(record.id), expected)
      if (may === 'done') kept.set(record.id, structuredClone(record))
      return may
    },
    remove: async (id, expected) => {
      const may = mayRemove(kept.get(id), expected)
      if (may === 'done') kept.delete(id)
      return may
    },
  }
}

/** Nobody waits longer than this for a store before the page says so [ms]. */
export const patience = 3000

/** The answer, or trouble after `limit` milliseconds. The question itself goes on; `late` is told when it is answered after all. */
export const answered = <T>(asked: Promise<T>, late: (answer: T) => void = () => undefined, limit: number = patience): Promise<T> =>
  new Promise((resolve, reject) => {
    let isLate = false
    const timer = setTimeout(() => {
      isLate = true
      reject(new ShelfTrouble('hanging'))
    }, limit)
    asked.then(
      (answer) => {
        clearTimeout(timer)
        if (isLate) late(answer)
        else resolve(answer)
      },
      (error: unknown) => {
        clearTimeout(timer)
        reject(error)
      },
    )
  })
