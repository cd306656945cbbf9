import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { defaultDocument } from '../../../src/core/spec/defaults.ts'
import { openDocument, reset, setName } from '../../../src/state/actions/document.ts'
import { editField } from '../../../src/state/actions/edit.ts'
import { undo } from '../../../src/state/actions/history.ts'
import { isKept, keptOf } from '../../../src/state/document/opened.ts'
import { pierHolder } from '../../../src/state/pierHolder.ts'
import { listenElsewhere } from '../../../src/state/storage/elsewhere.ts'
import { keepNote, noteTabs, readNote } from '../../../src/state/storage/note.ts'
import { memoryShelf, type ShelfPort, ShelfTrouble } from '../../../src/state/storage/port.ts'
import { startSession } from '../../../src/state/storage/session.ts'
import type { PierStore } from '../../../src/state/store.ts'
import { fakePage, fakeTab, freshStore, memoryStorage } from '../freshStore.ts'
import { freshShelf, troubledPort } from '../shelf/parts.ts'
import { until } from '../../until.ts'

const browserPort = (): ShelfPort => ({ ...memoryShelf(), kind: 'browser' })
const alone = (id: string) => ({ id, live: async () => new Set([id]) })
const nameIn = async (storage: ReturnType<typeof memoryStorage>, tab: string): Promise<string> => {
  const note = await readNote(storage, tab)
  return note.kind === 'document' ? note.document.name : note.kind
}

/** A tab with its note, its shelf, and one saved pier that is open. */
const withSaved = async ({ port = browserPort(), storage = memoryStorage(), tab = 'first' } = {}) => {
  const set = freshShelf({ port, storage, tab: alone(tab) })
  keepNote(set.parts.holder, storage, { tab, revision: 0, hash: () => '' })
  await set.shelf.refresh()
  editField(set.pier, 'hole.depth', '50 in')
  setName(set.pier, 'Boat shelter')
  expect(await set.shelf.save()).toBe(true)
  return { ...set, port, storage }
}
const drafts = ({ shelf }: Pick<ReturnType<typeof freshShelf>, 'shelf'>) =>
  shelf.state.getState().drafts.map((one) => (one.kind === 'draft' ? one.note.document.name : one.kind))
const empty = async (port: ShelfPort): Promise<void> => {
  for (const raw of await port.list()) await port.remove((raw as { id: string }).id, null)
}

describe('[M26] a note goes only when the store has shown the same document', () => {
  it('the database is lost and the note of a closed tab still holds the saved pier: it waits under "Not saved", and opens', async () => {
    const { storage } = await withSaved()
    const later = freshShelf({ port: browserPort(), storage, tab: alone('later') })
    keepNote(later.parts.holder, storage, { tab: 'later', revision: 0, hash: () => '' })
    await later.shelf.refresh()
    expect(later.shelf.state.getState().missing).toBe(1)
    expect(drafts(later)).toEqual(['Boat shelter'])
    expect(noteTabs(storage)).toEqual(['first'])
    await later.shelf.openDraft('first')
    expect(later.pier.getState().document.name).toBe('Boat shelter')
    expect(isKept(later.pier.getState())).toBe(false)
    expect(await later.shelf.save()).toBe(true)
    expect(later.shelf.state.getState().said?.code).toBe('saved')
  })

  it('goes where the store shows the same document, and stays where it shows another or nothing yet', async () => {
    const set = await withSaved()
    const { port, trouble } = troubledPort(set.port)
    const later = freshShelf({ port, storage: set.storage, tab: alone('later') })
    trouble.before = async () => {
      throw new ShelfTrouble('hanging')
    }
    await later.shelf.refresh()
    expect(noteTabs(set.storage)).toEqual(['first'])
    expect(drafts(later)).toEqual([])
    trouble.before = null
    await later.shelf.refresh()
    expect(noteTabs(set.storage)).toEqual([])
    expect(drafts(later)).toEqual([])

    const other = await withSaved({ tab: 'second' })
    editField(other.pier, 'hole.depth', '61 in')
    const before = other.storage.kept.get('pierglass.note.second') ?? ''
    expect(await other.shelf.save()).toBe(true)
    // A tab that died before it wrote down what it had saved last.
    other.storage.kept.set('pierglass.note.second', before.replace('"clean":false', '"clean":true'))
    const third = freshShelf({ port: other.port, storage: other.storage, tab: alone('third') })
    await third.shelf.refresh()
    expect(noteTabs(other.storage)).toEqual([])
    other.storage.kept.set('pierglass.note.second', before.replace('"clean":false', '"clean":true').replace('61 in', '62 in'))
    await third.shelf.refresh()
    expect(drafts(third)).toEqual(['Boat shelter'])
  })

  it('a saved pier that makes way is set aside until the store has shown it', async () => {
    const set = await withSaved()
    await empty(set.port)
    reset(set.pier)
    const [aside = ''] = noteTabs(set.storage).filter((tab) => tab !== 'first')
    expect(await nameIn(set.storage, aside)).toBe('Boat shelter')
    await set.shelf.refresh()
    expect(drafts(set)).toEqual(['Boat shelter'])

    const well = await withSaved()
    reset(well.pier)
    expect(noteTabs(well.storage)).toHaveLength(2)
    await well.shelf.refresh()
    expect(noteTabs(well.storage)).toEqual(['first'])
    undo(well.pier)
    expect(isKept(well.pier.getState())).toBe(true)
  })

  it('a tab that can not take a note over leaves it where it is', async () => {
    const { storage } = await withSaved()
    const { setItem } = storage
    storage.setItem = (key, value) => {
      if (key === 'pierglass.note.next') throw Object.assign(new Error('full'), { name: 'QuotaExceededError' })
      setItem(key, value)
    }
    const store = freshStore()
    await startSession(store, fakePage(), storage, fakeTab('next'))
    await until(() => expect(store.getState().document.name).toBe('Boat shelter'))
    expect(noteTabs(storage)).toEqual(['first'])
  })

  it('undo drops what was set aside only when the note of the tab holds it again', async () => {
    const refuse: { error: Error | null } = { error: null }
    const storage = memoryStorage(refuse)
    const store = freshStore()
    await startSession(store, fakePage(), storage, fakeTab('own'))
    editField(store, 'hole.depth', '50 in')
    reset(store)
    expect(noteTabs(storage)).toHaveLength(2)
    const { setItem } = storage
    storage.setItem = () => {
      throw new Error('full')
    }
    undo(store)
    storage.setItem = setItem
    expect(noteTabs(storage)).toHaveLength(2)
  })

  it('a note that stands twice after a reload under load is listed once', async () => {
    const { storage, port } = await withSaved()
    const raw = storage.kept.get('pierglass.note.first') ?? ''
    const dirty = raw.replace('"clean":true', '"clean":false')
    storage.kept.set('pierglass.note.first', dirty)
    storage.kept.set('pierglass.note.again', dirty)
    const set = freshShelf({ storage, port, tab: alone('again') })
    await set.shelf.refresh()
    expect(drafts(set)).toEqual([])
    expect(noteTabs(storage)).toEqual(['again'])
  })
})

describe('[M27] nothing is called saved that does not lie in the store as it is on the page', () => {
  it('the store is emptied under the tab: its pier is not saved any more, and is set aside when another makes way for it', async () => {
    const set = await withSaved()
    await empty(set.port)
    await set.shelf.refresh()
    expect(isKept(set.pier.getState())).toBe(false)
    openDocument(set.pier, { ...defaultDocument, name: 'From a file' })
    const [aside = ''] = noteTabs(set.storage).filter((tab) => tab !== 'first')
    expect(await nameIn(set.storage, aside)).toBe('Boat shelter')
    await set.shelf.refresh()
    expect(drafts(set)).toEqual(['Boat shelter'])
  })

  it('another tab deletes the record, or saves over it: told at once, and not called saved', async () => {
    const set = await withSaved()
    const stop = listenElsewhere(pierHolder(set.pier))
    const line = new BroadcastChannel('pierglass.shelf')
    const { id } = keptOf(set.pier.getState())
    const record = (await set.port.get(id)) as { id: string }
    await set.port.remove(id, null)
    line.postMessage({ kind: 'removed', id, revision: 0 })
    await until(() => expect(isKept(set.pier.getState())).toBe(false))
    expect(set.pier.getState().notices.map(({ code }) => code)).toContain('changed-elsewhere')
    // Whoever deleted it puts it back.
    await set.port.put(record, null)
    line.postMessage({ kind: 'saved', id, revision: 0 })
    await until(() => expect(isKept(set.pier.getState())).toBe(true))
    await set.port.remove(id, null)
    await set.port.put({ ...record, revision: 2, job: 'another', name: 'Theirs' } as { id: string }, null)
    line.postMessage({ kind: 'saved', id, revision: 2 })
    await until(() => expect(isKept(set.pier.getState())).toBe(false))
    line.close()
    stop()
  })

  it('a record that came back, from a file or from the one who deleted it, is saved again', async () => {
    const set = await withSaved()
    const text = set.shelf.exportText()
    await empty(set.port)
    await set.shelf.refresh()
    expect(isKept(set.pier.getState())).toBe(false)
    await set.shelf.importText(text)
    expect(isKept(set.pier.getState())).toBe(true)
  })

  it('a pier of an earlier version of the file is as saved as before, though it would be written otherwise today', async () => {
    const set = await withSaved()
    const [raw] = await set.port.list()
    const { id, job } = raw as { id: string; job: string }
    const { crc32 } = await import('../../../src/state/storage/link.ts')
    const older = JSON.stringify(JSON.parse(job))
    await set.port.remove(id, null)
    await set.port.put({ ...(raw as { id: string }), job: older, check: crc32(new TextEncoder().encode(older)) } as { id: string }, null)
    await set.shelf.refresh()
    expect(isKept(set.pier.getState())).toBe(true)
  })

  it('without a database: kept in memory is not saved, and the draft of what makes way is there after a reload', async () => {
    const { port, trouble } = troubledPort()
    trouble.before = async () => {
      throw new ShelfTrouble('blocked')
    }
    const storage = memoryStorage()
    const set = freshShelf({ port, storage, tab: alone('first') })
    keepNote(set.parts.holder, storage, { tab: 'first', revision: 0, hash: () => '' })
    await set.shelf.refresh()
    editField(set.pier, 'hole.depth', '50 in')
    setName(set.pier, 'Passing')
    expect(await set.shelf.save()).toBe(true)
    expect(set.shelf.state.getState().said?.code).toBe('in-memory')
    expect(isKept(set.pier.getState())).toBe(false)
    // Saved again, it goes over itself; opened, it is still not called saved.
    editField(set.pier, 'hole.depth', '51 in')
    expect(await set.shelf.save()).toBe(true)
    expect(set.shelf.state.getState().piers).toHaveLength(1)
    openDocument(set.pier, defaultDocument)
    await set.shelf.openPier(set.shelf.state.getState().piers[0]?.id ?? '')
    expect(isKept(set.pier.getState())).toBe(false)
    openDocument(set.pier, defaultDocument)

    const next = freshShelf({ port: troubledPort().port, storage, tab: alone('next') })
    await next.shelf.refresh()
    expect(drafts(next)).toContain('Passing')
    const [tab = ''] = noteTabs(storage).filter((one) => one !== 'first')
    await next.shelf.openDraft(tab)
    expect(next.pier.getState().document.written['hole.depth']).toBe('51 in')
    // What lay in memory is nowhere now: saving asks nothing about it.
    expect(await next.shelf.save()).toBe(true)
    expect(next.shelf.state.getState().said?.code).toBe('saved')
  })
})

describe('[M28] which pier was last is told by a counter', () => {
  beforeEach(() => void vi.useFakeTimers({ toFake: ['Date'] }))
  afterEach(() => void vi.useRealTimers())

  it('a clock that is set back opens the newer pier all the same', async () => {
    const storage = memoryStorage()
    const opened = async (tab: string): Promise<PierStore> => {
      const store = freshStore()
      await startSession(store, fakePage(), storage, fakeTab(tab, ['a', 'b']))
      return store
    }
    vi.setSystemTime('2030-06-01')
    const a = await opened('a')
    const b = await opened('b')
    setName(a, 'Older')
    vi.setSystemTime('2001-01-01')
    setName(b, 'Newer')
    expect(noteTabs(storage)).toEqual(['b', 'a'])
    expect((await opened('c')).getState().document.name).toBe('Newer')
  })

  it('notes from before they were counted stand behind the others, by their clock', async () => {
    const storage = memoryStorage()
    const old = (at: number) => JSON.stringify({ revision: 1, at, job: '{}', typed: [], hash: '', place: null, clean: false })
    storage.setItem('pierglass.note.x', old(1_800_000_000_000))
    storage.setItem('pierglass.note.y', old(1_900_000_000_000))
    vi.setSystemTime('2001-01-01')
    const store = freshStore()
    keepNote(pierHolder(store), storage, { tab: 'own', revision: 0, hash: () => '' })
    setName(store, 'Now')
    expect(noteTabs(storage)).toEqual(['own', 'y', 'x'])
    storage.setItem('pierglass.notes', 'not a number')
    setName(store, 'Later')
    expect(await nameIn(storage, 'own')).toBe('Later')
  })
})
