import { describe, expect, it, vi } from 'vitest'
import { pierKind } from '../../../src/core/documents/pier.ts'
import type { PierDocument } from '../../../src/core/model/spec.ts'
import { defaultDocument } from '../../../src/core/spec/defaults.ts'
import { openDocument, setName } from '../../../src/state/actions/document.ts'
import { dragField } from '../../../src/state/actions/drag.ts'
import { editField } from '../../../src/state/actions/edit.ts'
import { undo } from '../../../src/state/actions/history.ts'
import { isKept } from '../../../src/state/document/opened.ts'
import { keepNote, noteTabs, setAside } from '../../../src/state/storage/note.ts'
import { memoryShelf, recordVersion, ShelfTrouble, type TroubleCode } from '../../../src/state/storage/port.ts'
import { memoryStorage } from '../freshStore.ts'
import { freshShelf, pierRecord, troubledPort } from './parts.ts'
import { until } from '../../until.ts'

const names = ({ shelf }: ReturnType<typeof freshShelf>) => shelf.state.getState().piers.map((one) => one.name)
const said = ({ shelf }: ReturnType<typeof freshShelf>) => shelf.state.getState().said?.code
const trouble = ({ shelf }: ReturnType<typeof freshShelf>) => shelf.state.getState().trouble
const only = (set: ReturnType<typeof freshShelf>) => set.shelf.state.getState().piers[0] ?? expect.fail('the shelf is empty')

/** A shelf with one saved pier that is open. */
const withOne = async (change: Parameters<typeof freshShelf>[0] = {}) => {
  const set = freshShelf(change)
  await set.shelf.refresh()
  editField(set.pier, 'hole.depth', '50 in')
  setName(set.pier, 'First')
  expect(await set.shelf.save()).toBe(true)
  return set
}

describe('[M5] nothing is called saved before it lies in the store', () => {
  it('makes a record, then saves over its own', async () => {
    const set = await withOne()
    expect(names(set)).toEqual(['First'])
    expect(said(set)).toBe('saved')
    expect(isKept(set.pier.getState())).toBe(true)
    editField(set.pier, 'hole.depth', '52 in')
    expect(isKept(set.pier.getState())).toBe(false)
    expect(await set.shelf.save()).toBe(true)
    expect(set.shelf.state.getState().piers).toHaveLength(1)
    expect(only(set)).toMatchObject({ kind: 'whole', record: { revision: 2 } })
  })

  it('says "saved" only after the record lies in the store', async () => {
    let release: () => void = () => undefined
    const { port, trouble: told } = troubledPort()
    const set = freshShelf({ port, limit: 5000 })
    await set.shelf.refresh()
    told.before = () => new Promise<void>((resolve) => (release = resolve))
    const saving = set.shelf.save()
    await Promise.resolve()
    expect(set.shelf.state.getState()).toMatchObject({ isSaving: true, said: null })
    told.before = null
    release()
    expect(await saving).toBe(true)
    expect(said(set)).toBe('saved')
  })

  it('takes a drag along that was not let go', async () => {
    const set = await withOne()
    dragField(set.pier, 'hole.depth', 1.5)
    await set.shelf.save()
    expect(set.pier.getState().document.spec.hole.depth).toBe(1.5)
    expect(only(set)).toMatchObject({ record: { job: expect.stringContaining('1500 mm') } })
  })

  it('reads back what it wrote: a store that lies is not believed', async () => {
    const { port, trouble: told } = troubledPort()
    const set = freshShelf({ port })
    told.get = async () => undefined
    expect(await set.shelf.save()).toBe(false)
    expect(said(set)).toBeUndefined()
    expect(trouble(set)).toBe('unknown')
  })

  it('undo to an earlier pier saves over that pier, never over the one opened after it', async () => {
    const set = await withOne()
    const first = only(set)
    openDocument(set.pier, { ...defaultDocument, name: 'Second' })
    await set.shelf.save()
    expect(names(set).sort()).toEqual(['First', 'Second'])
    undo(set.pier)
    expect(set.pier.getState().document.name).toBe('First')
    editField(set.pier, 'hole.depth', '55 in')
    await set.shelf.save()
    expect(names(set).sort()).toEqual(['First', 'Second'])
    expect(only(set)).toMatchObject({ id: first.id, name: 'First' })
  })

  it('asks the browser once to keep what is saved, after the first real saving, and remembers the answer', async () => {
    const persist = vi.fn(async () => false)
    const storage = memoryStorage()
    const set = freshShelf({ persist, storage })
    await set.shelf.refresh()
    expect(persist).not.toHaveBeenCalled()
    await set.shelf.save()
    await until(() => expect(set.shelf.state.getState().witness.persisted).toBe(false))
    await set.shelf.saveAsNew()
    const later = freshShelf({ persist, storage })
    await later.shelf.save()
    expect(persist).toHaveBeenCalledTimes(1)
  })

  it('counts what was saved since the last file, and starts again with one', async () => {
    const set = await withOne()
    await set.shelf.saveAsNew()
    expect(set.shelf.state.getState().witness.unfiled).toBe(2)
    expect(set.shelf.exportText()).toContain('pierglassShelf')
    expect(set.shelf.state.getState().witness.unfiled).toBe(0)
  })
})

describe('[M6] of two tabs on one pier the second asks, and both are kept', () => {
  const two = async () => {
    const a = await withOne()
    const b = freshShelf({ port: a.parts.port, storage: a.parts.storage })
    await b.shelf.refresh()
    await b.shelf.openPier(only(a).id)
    return { a, b }
  }

  it('the second saving asks, and changes nothing by itself', async () => {
    const { a, b } = await two()
    editField(a.pier, 'hole.depth', '60 in')
    editField(b.pier, 'hole.depth', '70 in')
    expect(await a.shelf.save()).toBe(true)
    expect(await b.shelf.save()).toBe(false)
    expect(b.shelf.state.getState().conflict).toMatchObject({ theirs: { kind: 'whole', record: { revision: 2 } } })
    expect(said(b)).toBeUndefined()
    await a.shelf.refresh()
    expect(only(a)).toMatchObject({ record: { job: expect.stringContaining('60 in') } })
  })

  it('mine as a new pier keeps both', async () => {
    const { a, b } = await two()
    editField(a.pier, 'hole.depth', '60 in')
    await a.shelf.save()
    editField(b.pier, 'hole.depth', '70 in')
    await b.shelf.save()
    expect(await b.shelf.saveAsNew()).toBe(true)
    expect(b.shelf.state.getState()).toMatchObject({ conflict: null, piers: { length: 2 } })
  })

  it('mine over theirs sets theirs aside', async () => {
    const { a, b } = await two()
    editField(a.pier, 'hole.depth', '60 in')
    await a.shelf.save()
    editField(b.pier, 'hole.depth', '70 in')
    await b.shelf.save()
    expect(await b.shelf.saveOverTheirs()).toBe(true)
    expect(only(b)).toMatchObject({ record: { revision: 3, job: expect.stringContaining('70 in') } })
    await until(() => expect(b.shelf.state.getState().drafts).toHaveLength(1))
    const [draft] = b.shelf.state.getState().drafts
    expect(draft?.kind === 'draft' && pierKind.write(draft.note.document as PierDocument)).toContain('60 in')
  })

  it('a pier that was removed elsewhere is told, and may be saved as a new one', async () => {
    const { a, b } = await two()
    await a.shelf.remove(only(a).id)
    editField(b.pier, 'hole.depth', '70 in')
    expect(await b.shelf.save()).toBe(false)
    expect(b.shelf.state.getState().conflict).toMatchObject({ theirs: null })
    expect(await b.shelf.saveOverTheirs()).toBe(true)
    expect(b.shelf.state.getState().piers).toHaveLength(1)
  })

  it('on two piers keep both without asking', async () => {
    const a = await withOne()
    const b = freshShelf({ port: a.parts.port, storage: a.parts.storage, newId: () => 'other' })
    setName(b.pier, 'Second')
    expect(await b.shelf.save()).toBe(true)
    await a.shelf.refresh()
    expect(names(a).sort()).toEqual(['First', 'Second'])
  })
})

describe('[M7] a saved pier opens, is copied, named, deleted and put back', () => {
  it('it opens as it was, beside what is open, as one undo step', async () => {
    const set = await withOne()
    const saved = set.pier.getState().document
    openDocument(set.pier, defaultDocument)
    editField(set.pier, 'hole.diameter', '24 in')
    const mine = set.pier.getState().document
    expect(await set.shelf.openPier(only(set).id)).toBe(true)
    expect(set.pier.getState().document).toEqual(saved)
    expect(isKept(set.pier.getState())).toBe(true)
    expect(set.pier.getState().notices.map((notice) => notice.code)).toEqual(['pier-set-aside'])
    undo(set.pier)
    expect(set.pier.getState().document).toBe(mine)
  })

  it('it is copied under a name of its own', async () => {
    const set = await withOne()
    expect(await set.shelf.duplicate(only(set).id, 'First, again')).toBe(true)
    expect(names(set)).toEqual(['First, again', 'First'])
    expect(set.pier.getState().document.name).toBe('First')
  })

  it('it takes other words, and so does the open pier when it is that one, edits and all', async () => {
    const set = await withOne()
    editField(set.pier, 'hole.depth', '58 in')
    expect(await set.shelf.putWords(only(set).id, 'Gate', 'by the road')).toBe(true)
    expect(only(set)).toMatchObject({ name: 'Gate', note: 'by the road' })
    expect(set.pier.getState().document).toMatchObject({ name: 'Gate', note: 'by the road' })
    expect(isKept(set.pier.getState())).toBe(false)
    expect(only(set)).toMatchObject({ record: { job: expect.stringContaining('50 in') } })
    expect(await set.shelf.save()).toBe(true)
    expect(only(set)).toMatchObject({ record: { revision: 3, job: expect.stringContaining('58 in') } })
  })

  it('it is taken away and put back as it was, for as long as the page lives', async () => {
    const set = await withOne()
    const before = only(set)
    expect(await set.shelf.remove(before.id)).toBe(true)
    expect(names(set)).toEqual([])
    expect(isKept(set.pier.getState())).toBe(false)
    expect(await set.shelf.putBack()).toBe(true)
    expect(only(set)).toEqual(before)
    expect(await set.shelf.putBack()).toBe(false)
  })

  it('one that is not there any more is told', async () => {
    const set = await withOne()
    const { id } = only(set)
    await set.parts.port.remove(id, null)
    expect(await set.shelf.openPier(id)).toBe(false)
    expect(said(set)).toBe('not-there')
    await until(() => expect(names(set)).toEqual([]))
  })
})

describe('[M8] damaged and newer records are never written over', () => {
  it('a damaged one is told, stays as it is, and goes along in the file', async () => {
    const set = await withOne()
    const good = only(set)
    if (good.kind !== 'whole') expect.fail('not whole')
    const raw = { ...good.record, job: good.record.job.replace('50 in', '51 in') }
    await set.parts.port.remove(good.id, null)
    await set.parts.port.put(raw, null)
    await set.shelf.refresh()
    expect(only(set)).toMatchObject({ kind: 'damaged', name: 'First' })
    const { document } = set.pier.getState()
    expect(await set.shelf.openPier(good.id)).toBe(false)
    expect(set.shelf.state.getState().said).toMatchObject({ code: 'cannot-open', issues: [{ code: 'record-check' }] })
    expect(set.pier.getState().document).toBe(document)
    expect(set.shelf.exportText()).toContain('51 in')
    expect(await set.parts.port.get(good.id)).toEqual(raw)
  })

  it('a newer one is never opened, written over, renamed or taken away', async () => {
    const set = await withOne()
    const good = only(set)
    if (good.kind !== 'whole') expect.fail('not whole')
    const newer = { ...good.record, schema: recordVersion + 1, revision: 7 }
    await set.parts.port.remove(good.id, null)
    await set.parts.port.put(newer, null)
    await set.shelf.refresh()
    editField(set.pier, 'hole.depth', '62 in')
    expect(await set.shelf.save()).toBe(false)
    expect(said(set)).toBe('newer-record')
    expect(await set.shelf.openPier(good.id)).toBe(false)
    expect(await set.shelf.putWords(good.id, 'x', '')).toBe(false)
    expect(await set.shelf.duplicate(good.id, 'x')).toBe(false)
    expect(await set.shelf.remove(good.id)).toBe(false)
    expect(await set.parts.port.get(good.id)).toEqual(newer)
    expect(await set.shelf.saveAsNew()).toBe(true)
  })
})

describe('[M9] a store in trouble loses nothing and says what is wrong', () => {
  const refusing = (code: TroubleCode) => async () => {
    throw new ShelfTrouble(code)
  }

  it('full: it is told, nothing is called saved, and the old record is as it was', async () => {
    const { port, trouble: told } = troubledPort()
    const set = await withOne({ port })
    const before = only(set)
    editField(set.pier, 'hole.depth', '70 in')
    told.before = refusing('full')
    expect(await set.shelf.save()).toBe(false)
    expect([trouble(set), said(set), isKept(set.pier.getState())]).toEqual(['full', undefined, false])
    expect(set.shelf.exportText()).toContain('50 in')
    told.before = null
    expect(await set.parts.port.get(before.id)).toEqual(before.kind === 'whole' && before.record)
    expect(await set.shelf.save()).toBe(true)
    expect(trouble(set)).toBeNull()
  })

  it('blocked: piers are kept in memory from then on, and it is said', async () => {
    const { port, trouble: told } = troubledPort()
    told.before = refusing('blocked')
    const set = freshShelf({ port })
    await set.shelf.refresh()
    expect(set.shelf.state.getState()).toMatchObject({ kind: 'memory', trouble: 'blocked', isRead: true })
    expect(await set.shelf.save()).toBe(true)
    expect(set.shelf.state.getState().piers).toHaveLength(1)
  })

  it('hanging: it is told in time, and gone when the answer comes after all', async () => {
    const { port, trouble: told } = troubledPort()
    const set = await withOne({ port })
    let release: () => void = () => undefined
    told.before = () => new Promise<void>((resolve) => (release = resolve))
    editField(set.pier, 'hole.depth', '70 in')
    vi.useFakeTimers()
    const saving = set.shelf.save()
    await vi.advanceTimersByTimeAsync(set.parts.limit)
    expect(await saving).toBe(false)
    expect([trouble(set), said(set)]).toEqual(['hanging', undefined])
    told.before = null
    release()
    await vi.runAllTimersAsync()
    vi.useRealTimers()
    expect(said(set)).toBe('saved')
    expect(trouble(set)).toBeNull()
    expect(isKept(set.pier.getState())).toBe(true)
  })

  it('wiped: it says how many piers there were', async () => {
    const storage = memoryStorage()
    const set = await withOne({ storage })
    await set.shelf.saveAsNew()
    const after = freshShelf({ storage, port: { ...memoryShelf(), kind: 'browser' } })
    await after.shelf.refresh()
    expect(after.shelf.state.getState().missing).toBe(2)
    await after.shelf.save()
    expect(after.shelf.state.getState().missing).toBe(0)
  })
})

describe('[M10] files and drafts come beside what is there', () => {
  it('a file comes beside what is there, and the same pier comes once', async () => {
    const set = await withOne()
    const text = set.shelf.exportText()
    await set.shelf.importText(text)
    expect(set.shelf.state.getState()).toMatchObject({ said: { code: 'imported', added: 0, same: 1 }, piers: { length: 1 } })
    editField(set.pier, 'hole.depth', '66 in')
    await set.shelf.save()
    await set.shelf.importText(text)
    expect(set.shelf.state.getState()).toMatchObject({ said: { code: 'imported', added: 1, same: 0 }, piers: { length: 2 } })
    const other = freshShelf()
    await other.shelf.importText(set.shelf.exportText())
    expect(names(other)).toEqual(names(set))
  })

  it('a bad file changes nothing and says what is wrong', async () => {
    const set = await withOne()
    const before = set.shelf.state.getState().piers
    for (const text of ['{', '{"pierglassShelf":7,"piers":[]}', '{"pierglass":1,"pier":{}}', '"x"']) {
      await set.shelf.importText(text)
      expect(said(set)).toBe('import-refused')
      expect(set.shelf.state.getState().said?.issues?.length).toBeGreaterThan(0)
      expect(set.shelf.state.getState().piers).toEqual(before)
    }
  })

  it('a file that can not be read is told, and nothing changes', async () => {
    const set = await withOne()
    await set.shelf.importText(null)
    expect(set.shelf.state.getState().said).toMatchObject({ code: 'import-refused', issues: [{ code: 'file-unreadable' }] })
    expect(names(set)).toEqual(['First'])
  })

  it('a record of a later version travels through, and nothing lies over it', async () => {
    const newer = { ...pierRecord(defaultDocument, { id: 'n', revision: 1, made: 1, changed: 1 }), schema: recordVersion + 1 }
    const set = freshShelf()
    await set.parts.port.put(newer, null)
    await set.shelf.refresh()
    const other = freshShelf()
    await other.shelf.importText(set.shelf.exportText())
    expect(await other.parts.port.get('n')).toEqual(newer)
  })

  it('an unsaved pier of another tab waits, opens, and is then no draft any more', async () => {
    const set = freshShelf()
    setAside(set.parts.storage, pierKind, {
      document: { ...defaultDocument, name: 'Left' },
      kept: { id: 'left', document: null, place: null },
    })
    keepNote(set.parts.holder, set.parts.storage, { tab: 'own', revision: 0, hash: () => '' })
    await set.shelf.refresh()
    await until(() => expect(set.shelf.state.getState().drafts).toHaveLength(1))
    const [draft] = set.shelf.state.getState().drafts
    await set.shelf.openDraft(draft?.tab ?? '')
    expect(set.pier.getState().document.name).toBe('Left')
    expect(isKept(set.pier.getState())).toBe(false)
    expect(noteTabs(set.parts.storage)).toEqual(['own'])
  })
})
