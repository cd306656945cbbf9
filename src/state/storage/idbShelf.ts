import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import { databaseName, storeName } from './rawRecords.ts'
import { mayRemove, mayReplace, type ShelfPort, ShelfTrouble, type TroubleCode } from './port.ts'

/** Raise it with an `upgrade` step that adds and never takes away. Every version that was published must stay open to the newest code. */
export const databaseVersion = 1

interface Schema extends DBSchema {
  piers: { key: string; value: unknown }
}
type Database = IDBPDatabase<Schema>

/** What the store has to say while nobody waits for it. */
export type StoreEvents = Readonly<{ tell: (code: 'held' | 'newer') => void; settled: (code: 'held') => void }>

const namesOf = (error: unknown): readonly string[] => {
  if (typeof error !== 'object' || error === null) return []
  const { name, inner, cause } = error as Readonly<{ name?: unknown; inner?: unknown; cause?: unknown }>
  return [String(name ?? ''), ...namesOf(inner), ...namesOf(cause)]
}

/** A full disk may hide inside an abort; a refused store goes by several names. */
export const troubleIn = (error: unknown): TroubleCode => {
  const names = namesOf(error)
  if (names.some((name) => /quota/i.test(name))) return 'full'
  if (names.some((name) => ['SecurityError', 'NotAllowedError', 'InvalidAccessError', 'NotSupportedError'].includes(name))) return 'blocked'
  if (names.includes('VersionError')) return 'newer'
  return 'unknown'
}

/** Errors after which a fresh connection may do. */
const isBroken = (error: unknown): boolean =>
  namesOf(error).some((name) => ['InvalidStateError', 'UnknownError', 'NotFoundError', 'TransactionInactiveError'].includes(name))

/** Where the browser has a database for this page. Even asking for it can throw. */
const hasDatabase = (): boolean => {
  try {
    return (globalThis.indexedDB ?? null) !== null
  } catch {
    return false
  }
}

/**
 * Saved piers in the browser's own database. One connection; a broken one is opened again once without a word.
 * @param wanted version of the database
 */
export const idbShelf = (events: StoreEvents, wanted: number = databaseVersion): ShelfPort => {
  let open: Promise<Database> | null = null
  let isOutdated = false

  const outdated = (): void => {
    if (isOutdated) return
    isOutdated = true
    events.tell('newer')
  }

  const connect = async (version: number | undefined): Promise<Database> => {
    let isHeld = false
    const database = await openDB<Schema>(databaseName, version, {
      upgrade: (created) => {
        if (!created.objectStoreNames.contains(storeName)) created.createObjectStore(storeName, { keyPath: 'id' })
      },
      // An old tab keeps the store at its old version: this goes on by itself when that tab lets go.
      blocked: () => {
        isHeld = true
        events.tell('held')
      },
      // A newer page wants to make the store over: let it, and write no more.
      blocking: (_, next) => {
        open = null
        database.close()
        if (next !== null) outdated()
      },
      terminated: () => {
        open = null
      },
    })
    if (isHeld) events.settled('held')
    return database
  }

  const opened = (): Promise<Database> => {
    open ??= connect(isOutdated ? undefined : wanted)
      .catch((error: unknown) => {
        if (troubleIn(error) !== 'newer') throw error
        outdated()
        return connect(undefined)
      })
      .catch((error: unknown) => {
        open = null
        throw error
      })
    return open
  }

  /** Runs a task on the connection; when that is broken, once more on a fresh one. */
  const run = async <T>(task: (database: Database) => Promise<T>): Promise<T> => {
    if (!hasDatabase()) throw new ShelfTrouble('blocked', 'no indexedDB')
    const attempt = async (): Promise<T> => task(await opened())
    try {
      return await attempt()
    } catch (error) {
      if (error instanceof ShelfTrouble) throw error
      if (!isBroken(error)) throw new ShelfTrouble(troubleIn(error), error)
      open = null
    }
    try {
      return await attempt()
    } catch (error) {
      throw error instanceof ShelfTrouble ? error : new ShelfTrouble(isBroken(error) ? 'lost' : troubleIn(error), error)
    }
  }

  /** One transaction that looks and writes; it is over, on the disk, when the promise is kept. */
  const write = <T>(
    task: (records: { get: (id: string) => Promise<unknown>; put: (r: unknown) => void; remove: (id: string) => void }) => Promise<T>,
  ) => {
    if (isOutdated) return Promise.reject(new ShelfTrouble('newer'))
    return run(async (database) => {
      if (isOutdated) throw new ShelfTrouble('newer')
      const transaction = database.transaction(storeName, 'readwrite', { durability: 'strict' })
      const asked: Promise<unknown>[] = []
      const records = {
        get: (id: string) => transaction.store.get(id),
        put: (record: unknown) => void asked.push(transaction.store.put(record)),
        remove: (id: string) => void asked.push(transaction.store.delete(id)),
      }
      const finished = async (): Promise<T> => {
        const result = await task(records)
        await Promise.all(asked)
        return result
      }
      const [result] = await Promise.all([finished(), transaction.done])
      return result
    })
  }

  return {
    kind: 'browser',
    list: () => run((database) => database.getAll(storeName)),
    get: (id) => run((database) => database.get(storeName, id)),
    put: (record, expected) =>
      write(async ({ get, put }) => {
        const may = mayReplace(await get(record.id), expected)
        if (may === 'done') put(record)
        return may
      }),
    remove: (id, expected) =>
      write(async ({ get, remove }) => {
        const may = mayRemove(await get(id), expected)
        if (may === 'done') remove(id)
        return may
      }),
  }
}
