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

const has = (value: unknown, key: string): unknown =>
  typeof value === 'object' && value !== null ? (value as Readonly<Record<string, unknown>>)[key] : undefined
/** Revision of whatever lies there; NaN when it has none. */
export const revisionOf = (raw: unknown): number => {
  const revision = has(raw, 'revision')
  return typeof revision === 'number' ? revision : Number.NaN
}
const isNewer = (raw: unknown, version: number): boolean => {
  const schema = has(raw, 'schema')
  return typeof schema === 'number' && schema > version
}

/** May `there` give way? The one rule of both stores. */
export const mayReplace = (there: unknown, expected: number | null, version: number): Written => {
  if (there === undefined) return expected === null ? 'done' : 'gone'
  if (isNewer(there, version)) return 'newer'
  return expected !== null && revisionOf(there) === expected ? 'done' : 'changed'
}
export const mayRemove = (there: unknown, expected: number | null, version: number): Written => {
  if (there === undefined) return 'gone'
  if (isNewer(there, version)) return 'newer'
  return expected === null || revisionOf(there) === expected ? 'done' : 'changed'
}
