import 'fake-indexeddb/auto'
import { IDBFactory } from 'fake-indexeddb'
import { openDB } from 'idb'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { defaultDocument } from '../../../src/core/spec/defaults.ts'
import { databaseName } from '../../../src/state/storage/rawRecords.ts'
import { databaseVersion, idbShelf, troubleIn } from '../../../src/state/storage/idbShelf.ts'
import type { ShelfTrouble } from '../../../src/state/storage/port.ts'
import { freshShelf, pierRecord } from './parts.ts'
import { until } from '../../until.ts'

beforeEach(() => {
  const own = new IDBFactory()
  Object.defineProperty(globalThis, 'indexedDB', { get: () => own, configurable: true })
})

const record = (id: string, revision = 1) => pierRecord({ ...defaultDocument, name: id }, { id, revision, made: 1, changed: revision })
const silent = { tell: () => undefined, settled: () => undefined }
const heard = () => {
  const told: string[] = []
  return { told, events: { tell: (code: string) => void told.push(code), settled: (code: string) => void told.push(`${code} over`) } }
}
const codeOf = (asked: Promise<unknown>): Promise<string> =>
  asked.then(
    () => 'none',
    (error: ShelfTrouble) => error.code,
  )

describe('[M11] the store of the browser looks and writes at once, strictly, and never over something newer', () => {
  it('keeps, gives back, lists and removes', async () => {
    const shelf = idbShelf(silent)
    expect(await shelf.put(record('a'), null)).toBe('done')
    expect(await shelf.put(record('b'), null)).toBe('done')
    expect(await shelf.get('a')).toEqual(record('a'))
    expect(await shelf.list()).toHaveLength(2)
    expect(await shelf.remove('a', 1)).toBe('done')
    expect(await shelf.get('a')).toBeUndefined()
    expect(await idbShelf(silent).list()).toEqual([record('b')])
  })

  it('looks at the revision and writes in one transaction', async () => {
    const shelf = idbShelf(silent)
    await shelf.put(record('a'), null)
    expect(await shelf.put(record('a', 2), null)).toBe('changed')
    expect(await shelf.put(record('a', 3), 2)).toBe('changed')
    expect(await shelf.put(record('z', 2), 1)).toBe('gone')
    expect(await shelf.remove('a', 9)).toBe('changed')
    expect(await shelf.remove('z', null)).toBe('gone')
    expect(await shelf.get('a')).toEqual(record('a'))
    const racing = await Promise.all([2, 2, 2].map((revision) => shelf.put(record('a', revision), 1)))
    expect(racing.sort()).toEqual(['changed', 'changed', 'done'])
  })

  it('never writes over a record of a later version', async () => {
    const shelf = idbShelf(silent)
    const newer = { ...record('a'), schema: 99 }
    await shelf.put(newer, null)
    expect(await shelf.put(record('a', 2), 1)).toBe('newer')
    expect(await shelf.remove('a', null)).toBe('newer')
    expect(await shelf.get('a')).toEqual(newer)
  })

  it('asks for strict durability at every writing', async () => {
    const asked: (IDBTransactionOptions | undefined)[] = []
    const { transaction } = IDBDatabase.prototype
    const spy = vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (this: IDBDatabase, names, mode, options) {
      if (mode === 'readwrite') asked.push(options)
      return transaction.call(this, names, mode, options)
    })
    const shelf = idbShelf(silent)
    await shelf.put(record('a'), null)
    await shelf.remove('a', null)
    spy.mockRestore()
    expect(asked).toEqual([{ durability: 'strict' }, { durability: 'strict' }])
  })

  it('opens a broken connection again without a word', async () => {
    const shelf = idbShelf(silent)
    await shelf.put(record('a'), null)
    const { transaction } = IDBDatabase.prototype
    let broken = 1
    const spy = vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (this: IDBDatabase, names, mode, options) {
      if (broken-- > 0) throw new DOMException('the connection is closing', 'InvalidStateError')
      return transaction.call(this, names, mode, options)
    })
    expect(await shelf.put(record('b'), null)).toBe('done')
    broken = 2
    expect(await codeOf(shelf.put(record('c'), null))).toBe('lost')
    spy.mockRestore()
    expect(await shelf.put(record('c'), null)).toBe('done')
  })

  it('is read and never written once a newer page has made it over', async () => {
    const { told, events } = heard()
    const shelf = idbShelf(events)
    await shelf.put(record('a'), null)
    const newer = await openDB(databaseName, databaseVersion + 1, { upgrade: (created) => void created.createObjectStore('more') })
    newer.close()
    expect(told).toEqual(['newer'])
    expect(await shelf.list()).toEqual([record('a')])
    expect(await codeOf(shelf.put(record('a', 2), 1))).toBe('newer')
    expect(await codeOf(shelf.remove('a', null))).toBe('newer')
    const later = heard()
    const old = idbShelf(later.events)
    expect(await old.list()).toEqual([record('a')])
    expect(later.told).toEqual(['newer'])
    expect(await codeOf(old.put(record('b'), null))).toBe('newer')
    expect(await old.list()).toEqual([record('a')])
  })

  it('that an old tab holds open says so, and goes on by itself when it is let go', async () => {
    const held = await openDB(databaseName, 1, { upgrade: (created) => void created.createObjectStore('piers', { keyPath: 'id' }) })
    const { told, events } = heard()
    const listing = idbShelf(events, 2).list()
    await until(() => expect(told).toEqual(['held']))
    held.close()
    expect(await listing).toEqual([])
    expect(told).toEqual(['held', 'held over'])
  })

  it('that is not there, or refuses to open, is blocked', async () => {
    const { open } = IDBFactory.prototype
    const spy = vi.spyOn(IDBFactory.prototype, 'open').mockImplementation(() => {
      throw new DOMException('denied', 'SecurityError')
    })
    expect(await codeOf(idbShelf(silent).list())).toBe('blocked')
    spy.mockRestore()
    expect(IDBFactory.prototype.open).toBe(open)
    Object.defineProperty(globalThis, 'indexedDB', { value: undefined, configurable: true, writable: true })
    expect(await codeOf(idbShelf(silent).list())).toBe('blocked')
  })

  it('finds a full disk wherever the error hides it', () => {
    expect(troubleIn(new DOMException('no room', 'QuotaExceededError'))).toBe('full')
    expect(troubleIn(Object.assign(new Error('aborted'), { name: 'AbortError', inner: { name: 'QuotaExceededError' } }))).toBe('full')
    expect(troubleIn(new Error('what', { cause: new DOMException('', 'QuotaExceededError') }))).toBe('full')
    expect(troubleIn(new Error('what'))).toBe('unknown')
    expect(troubleIn(undefined)).toBe('unknown')
  })

  it('a writing that fails on the way leaves the record as it was', async () => {
    const shelf = idbShelf(silent)
    await shelf.put(record('a'), null)
    const spy = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore) {
      this.transaction.abort()
      throw new DOMException('no room', 'QuotaExceededError')
    })
    expect(await codeOf(shelf.put(record('a', 2), 1))).toBe('full')
    spy.mockRestore()
    expect(await shelf.get('a')).toEqual(record('a'))
  })

  it('carries the whole shelf', async () => {
    const set = freshShelf({ port: idbShelf(silent), limit: 3000 })
    await set.shelf.refresh()
    expect(await set.shelf.save()).toBe(true)
    expect(await set.shelf.duplicate(set.shelf.state.getState().piers[0]?.id ?? '', 'Copy')).toBe(true)
    expect(set.shelf.state.getState().piers.map((one) => one.kind)).toEqual(['whole', 'whole'])
  })
})

describe('[M31] a database that throws when it is asked for is none: piers are kept in memory', () => {
  it('and that is said', async () => {
    const asking = vi.spyOn(globalThis, 'indexedDB', 'get').mockImplementation(() => {
      throw new DOMException('denied', 'SecurityError')
    })
    const set = freshShelf({ port: idbShelf(silent) })
    await set.shelf.refresh()
    expect(set.shelf.state.getState()).toMatchObject({ kind: 'memory', trouble: 'blocked' })
    expect(await set.shelf.save()).toBe(true)
    expect(set.shelf.state.getState()).toMatchObject({ said: { code: 'in-memory' }, piers: { length: 1 } })
    asking.mockRestore()
  })
})
