import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { openingDocument } from '../../src/core/spec/openingPier.ts'
import { defaultDocument } from '../../src/core/spec/defaults.ts'
import { reset, setName } from '../../src/state/actions/document.ts'
import { dragField } from '../../src/state/actions/drag.ts'
import { editField } from '../../src/state/actions/edit.ts'
import { canUndo, undo } from '../../src/state/actions/history.ts'
import { takeLooked } from '../../src/state/actions/look.ts'
import { setTheme, setUnits } from '../../src/state/actions/view.ts'
import { linkIn, linkTo } from '../../src/state/storage/address.ts'
import { noteTabs, readNote } from '../../src/state/storage/note.ts'
import { startSession } from '../../src/state/storage/session.ts'
import { fakePage, fakeTab, freshStore, memoryStorage } from './freshStore.ts'
import { until } from '../until.ts'

const codes = (store: ReturnType<typeof freshStore>): string[] => store.getState().notices.map((notice) => notice.code)
const hashOf = (text: string): string => new URL(text).hash

/** A session in which one value was set, and what it left behind. */
const session = async (depth: string, name = '') => {
  const storage = memoryStorage()
  const page = fakePage()
  const store = freshStore()
  await startSession(store, page, storage)
  editField(store, 'hole.depth', depth)
  if (name) setName(store, name)
  return { storage, page, document: store.getState().document, hash: hashOf(linkTo(store.getState().document, page.location.href)) }
}

beforeEach(() => void vi.useFakeTimers())
afterEach(() => void vi.useRealTimers())

describe('[J6] what is not needed is not read', () => {
  it('opens with neither note nor link at once, in order', async () => {
    const store = freshStore()
    await startSession(store, fakePage(), memoryStorage())
    expect(store.getState().document).toBe(defaultDocument)
    expect(codes(store)).toEqual([])
  })
})

describe('[J6] the note of the open pier', () => {
  it('is written at once and brings everything back, words and name too', async () => {
    const { storage, document } = await session(`4'-6"`, 'Gate <b>post</b>')
    const store = freshStore()
    await startSession(store, fakePage(), storage)
    expect(store.getState().document).toEqual(document)
    expect(store.getState().document.written['hole.depth']).toBe(`4'-6"`)
    expect(canUndo(store)).toBe(false)
    expect(codes(store)).toEqual([])
  })

  it('is not written before it has been read: a page that is left while it opens loses nothing', async () => {
    const { storage, document } = await session('54 in', 'Gate post')
    const before = new Map(storage.kept)
    let answer = (_: ReadonlySet<string> | null): void => {}
    const late = new Promise<ReadonlySet<string> | null>((resolve) => {
      answer = resolve
    })
    const slow = fakeTab().then((tab) => ({ ...tab, live: () => late }))
    const store = freshStore()
    const opening = startSession(store, fakePage(), storage, slow)
    // Whatever happens meanwhile: nothing of it is kept.
    setName(store, 'too early')
    await vi.advanceTimersByTimeAsync(5000)
    const written = [...storage.kept].filter(([key, value]) => key.startsWith('pierglass.note.') && before.get(key) !== value)
    for (const [, value] of written) expect(value).not.toContain('too early')
    for (const [key, value] of before) if (key.startsWith('pierglass.note.')) expect(storage.kept.get(key)).toBe(value)
    answer(new Set())
    await opening
    expect(store.getState().document).toEqual(document)
  })

  it('is not touched by a drag that was not let go, nor by looking round', async () => {
    const { storage } = await session('50 in')
    const store = freshStore()
    await startSession(store, fakePage(), storage)
    const before = new Map(storage.kept)
    dragField(store, 'hole.depth', 1.5)
    expect([...storage.kept].filter(([key]) => key !== 'pierglass.page')).toEqual([...before])
  })

  it('raises its revision at every commit', async () => {
    const storage = memoryStorage()
    const store = freshStore()
    await startSession(store, fakePage(), storage)
    editField(store, 'hole.depth', '50 in')
    editField(store, 'hole.depth', '51 in')
    undo(store)
    const [tab = ''] = noteTabs(storage)
    const note = await readNote(storage, tab)
    expect(note.kind === 'document' ? note.revision : 0).toBe(3)
  })

  it.each([
    '{',
    '"text"',
    '{"revision":1}',
    '{"revision":1,"job":"{}"}',
    '{"revision":1,"job":"{}","typed":[]}',
    '{"revision":1.5,"job":"x","typed":[]}',
  ])('is never opened when it is damaged: %s', async (raw) => {
    const storage = memoryStorage()
    storage.setItem('pierglass.note.gone', raw)
    const store = freshStore()
    await startSession(store, fakePage(), storage)
    expect(store.getState().document).toBe(defaultDocument)
    expect(store.getState().notices).toMatchObject([{ code: 'note-damaged', detail: raw }])
    // It makes room, and lies aside as it was found: nothing is ever written over it, and it is told once.
    editField(store, 'hole.depth', '50 in')
    expect(storage.kept.get('pierglass.unread.gone')).toBe(raw)
    const next = freshStore()
    await startSession(next, fakePage(), storage)
    expect(codes(next)).toEqual([])
  })

  it('says when there is no room, and takes it back when there is', async () => {
    const refuse: { error: Error | null } = { error: null }
    const storage = memoryStorage(refuse)
    const store = freshStore()
    await startSession(store, fakePage(), storage)
    refuse.error = Object.assign(new Error('full'), { name: 'QuotaExceededError' })
    editField(store, 'hole.depth', '50 in')
    expect(codes(store)).toEqual(['storage-full'])
    refuse.error = null
    editField(store, 'hole.depth', '51 in')
    expect(codes(store)).toEqual([])
  })

  it('works without any storage, and says so', async () => {
    const store = freshStore()
    await startSession(store, fakePage(), memoryStorage({ error: new Error('denied') }))
    expect(codes(store)).toEqual(['storage-blocked'])
    const none = freshStore()
    await startSession(none, fakePage(), null)
    editField(none, 'hole.depth', '50 in')
    expect(codes(none)).toEqual(['storage-blocked'])
  })

  it('keeps units and page colours with the machine', async () => {
    const storage = memoryStorage()
    const store = freshStore()
    await startSession(store, fakePage(), storage)
    setUnits(store, 'metric')
    setTheme(store, 'dark')
    const next = freshStore()
    await startSession(next, fakePage(), storage)
    expect(next.getState().view).toMatchObject({ units: 'metric', theme: 'dark' })
  })
})

describe('[J9] two tabs lose nothing', () => {
  it('write notes of their own; the one written last opens, the other waits', async () => {
    const storage = memoryStorage()
    const [a, b] = [freshStore(), freshStore()]
    await startSession(a, fakePage(), storage, fakeTab('a', ['b']))
    await startSession(b, fakePage(), storage, fakeTab('b', ['a']))
    editField(b, 'hole.depth', '50 in')
    vi.advanceTimersByTime(5)
    editField(a, 'hole.depth', '60 in')
    vi.advanceTimersByTime(5)
    editField(b, 'hole.diameter', '24 in')
    expect(noteTabs(storage)).toEqual(['b', 'a'])
    const next = freshStore()
    await startSession(next, fakePage(), storage, fakeTab('c'))
    expect(next.getState().document.spec).toEqual(b.getState().document.spec)
    await until(() => expect([...noteTabs(storage)].sort()).toEqual(['a', 'c']))
    const waiting = await readNote(storage, 'a')
    expect(waiting.kind === 'document' && waiting.document).toEqual(a.getState().document)
  })

  it('leave the note of a tab that lives where it is', async () => {
    const { storage } = await session('50 in')
    const [old = ''] = noteTabs(storage)
    const store = freshStore()
    await startSession(store, fakePage(), storage, fakeTab('new', [old]))
    await Promise.resolve()
    expect([...noteTabs(storage)].sort()).toEqual(['new', old].sort())
  })

  it('go on in their own note after a reload, however old it is', async () => {
    const storage = memoryStorage()
    const [a, b] = [freshStore(), freshStore()]
    await startSession(a, fakePage(), storage, fakeTab('a'))
    editField(a, 'hole.depth', '50 in')
    vi.advanceTimersByTime(5)
    await startSession(b, fakePage(), storage, fakeTab('b', ['a']))
    editField(b, 'hole.depth', '60 in')
    const again = freshStore()
    await startSession(again, fakePage(), storage, fakeTab('a', ['b']))
    expect(again.getState().document.spec).toEqual(a.getState().document.spec)
  })

  it('a reload before the address has followed finds the last edit, not the address', async () => {
    const storage = memoryStorage()
    const page = fakePage()
    const store = freshStore()
    await startSession(store, page, storage, fakeTab('a'))
    editField(store, 'hole.depth', '50 in')
    vi.advanceTimersByTime(500)
    editField(store, 'hole.depth', '55 in')
    const again = freshStore()
    await startSession(again, fakePage(page.location.hash), storage, fakeTab('a'))
    expect(again.getState().document.spec).toEqual(store.getState().document.spec)
    expect(codes(again)).toEqual([])
  })
})

describe('[J10] a pier that makes way for another is set aside unless it is kept elsewhere', () => {
  const started = async () => {
    const storage = memoryStorage()
    const page = fakePage()
    const store = freshStore()
    await startSession(store, page, storage, fakeTab('own'))
    return { storage, page, store }
  }
  const asides = (storage: ReturnType<typeof memoryStorage>) => noteTabs(storage).filter((tab) => tab !== 'own')

  it('when the pier of a link is taken, and one undo brings it back without a second copy', async () => {
    const other = await session('60 in')
    const { storage, page, store } = await started()
    editField(store, 'hole.depth', '50 in')
    const mine = store.getState().document
    page.go(other.hash)
    await until(() => expect(store.getState().looking).not.toBeNull())
    expect(asides(storage)).toEqual([])
    takeLooked(store)
    expect(codes(store)).toEqual(['pier-set-aside'])
    expect(store.getState().document.spec).toEqual(other.document.spec)
    const [aside = ''] = asides(storage)
    const note = await readNote(storage, aside)
    expect(note.kind === 'document' && note.document).toEqual(mine)
    undo(store)
    expect(store.getState().document).toBe(mine)
    expect(asides(storage)).toEqual([])
  })

  it('when it starts over, and not when nothing was changed', async () => {
    const { storage, store } = await started()
    reset(store)
    expect(asides(storage)).toEqual([])
    editField(store, 'hole.depth', '50 in')
    reset(store)
    expect(asides(storage)).toHaveLength(1)
    undo(store)
    expect(asides(storage)).toEqual([])
  })

  it('a damaged link leaves the open pier and its note as they are', async () => {
    const { storage, page, store } = await started()
    editField(store, 'hole.depth', '50 in')
    const { document } = store.getState()
    const before = new Map(storage.kept)
    page.go('#p=1AAgarbage')
    await until(() => expect(codes(store)).toEqual(['link-damaged']))
    expect(store.getState().document).toBe(document)
    expect(store.getState().notices[0]?.issues?.[0]?.code).toMatch(/^link-/)
    expect([...storage.kept]).toEqual([...before])
  })
})

describe('[J7] the address', () => {
  it('follows the pier within half a second and reopens the same one', async () => {
    const page = fakePage()
    const store = freshStore(openingDocument)
    await startSession(store, page, memoryStorage())
    expect(page.location.hash).toBe('')
    editField(store, 'hole.depth', '50 in')
    editField(store, 'hole.depth', '52 in')
    vi.advanceTimersByTime(500)
    const found = await linkIn(page.location.hash)
    expect(found.kind === 'document' && found.document.spec).toEqual(store.getState().document.spec)
  })

  it('changes at most a few times a second', async () => {
    const page = fakePage()
    const store = freshStore()
    let writes = 0
    const { replaceState } = page.history
    page.history.replaceState = (...args) => {
      writes++
      replaceState(...args)
    }
    await startSession(store, page, memoryStorage())
    for (let i = 0; i < 100; i++) {
      editField(store, 'hole.depth', `${40 + (i % 30)} in`)
      vi.advanceTimersByTime(10)
    }
    vi.advanceTimersByTime(1000)
    expect(writes).toBeLessThanOrEqual(4)
    const found = await linkIn(page.location.hash)
    expect(found.kind === 'document' && found.document.spec).toEqual(store.getState().document.spec)
  })

  it('of the last session itself opens that session, name and all', async () => {
    const { storage, hash, document } = await session('50 in', 'Mine')
    const store = freshStore()
    await startSession(store, fakePage(hash), storage)
    expect(store.getState().document).toEqual(document)
    expect(codes(store)).toEqual([])
  })

  it('that is damaged is named and opens nothing; the last session does', async () => {
    const { storage, hash, document } = await session('50 in')
    const store = freshStore()
    await startSession(store, fakePage(hash.slice(0, -2)), storage)
    expect(store.getState().document).toEqual(document)
    expect(store.getState().notices[0]).toMatchObject({ code: 'link-damaged' })
    expect(store.getState().notices[0]?.issues?.length).toBeGreaterThan(0)
    const bare = freshStore()
    await startSession(bare, fakePage(hash.slice(0, -2)), memoryStorage())
    expect(bare.getState().document).toBe(defaultDocument)
  })

  it('holds neither name nor query', async () => {
    const { document } = await session('50 in', 'Secret name')
    const link = linkTo(document, 'http://pier.test/app/?quality=light#old')
    expect(link.startsWith('http://pier.test/app/#p=')).toBe(true)
    expect(link).not.toMatch(/quality|Secret|old/)
    const found = await linkIn(hashOf(link))
    expect(found.kind === 'document' && found.document.name).toBe('')
  })
})
