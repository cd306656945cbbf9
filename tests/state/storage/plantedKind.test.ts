import { describe, expect, it } from 'vitest'
import { documentKind, documentKinds } from '../../../src/core/documents/index.ts'
import { pierKind } from '../../../src/core/documents/pier.ts'
import { editField } from '../../../src/state/actions/edit.ts'
import { isKept, keptOf } from '../../../src/state/document/opened.ts'
import { pierHolder } from '../../../src/state/pierHolder.ts'
import { addressOf, documentIn } from '../../../src/state/storage/address.ts'
import { keepNote, keptByNote, noteTabs, readNote } from '../../../src/state/storage/note.ts'
import { memoryShelf } from '../../../src/state/storage/port.ts'
import { readDocument } from '../../../src/state/storage/shelfFile.ts'
import { freshStore, memoryStorage } from '../freshStore.ts'
import { freshShelf } from '../shelf/parts.ts'
import { bothKinds, freshRow, type PostRow, rowKind } from './plantedKind.ts'
import { until } from '../../until.ts'

const hashOf = (href: string): string => new URL(href).hash

describe('[M25] a kind of document is one record: everything that keeps documents goes through it', () => {
  it('the kinds of this page have ids, file marks and link letters of their own', () => {
    for (const of of [(kind: (typeof documentKinds)[number]) => kind.id, (kind: (typeof documentKinds)[number]) => kind.fileMark])
      expect(new Set(documentKinds.map(of)).size).toBe(documentKinds.length)
    const letters = documentKinds.flatMap(({ link }) => link?.letter ?? [])
    expect(new Set(letters).size).toBe(letters.length)
    expect(documentKind(undefined)).toBe(pierKind)
    expect(documentKind(rowKind.id)).toBeUndefined()
  })

  it('autosave and note: each commit is written and read back, beside the note of a pier', async () => {
    const storage = memoryStorage()
    const { holder, setPosts } = freshRow()
    keepNote(holder, storage, { tab: 'row', revision: 0, hash: () => '' })
    const pier = freshStore()
    keepNote(pierHolder(pier), storage, { tab: 'pier', revision: 0, hash: () => '' })
    setPosts(7)
    editField(pier, 'hole.depth', '50 in')
    expect(noteTabs(storage, rowKind)).toEqual(['row'])
    expect(noteTabs(storage, pierKind)).toEqual(['pier'])
    const note = await readNote(storage, 'row', bothKinds)
    if (note.kind !== 'document') expect.fail(note.kind)
    expect(note.document).toEqual({ ...rowKind.empty, posts: 7 })
    expect(note.of).toBe(rowKind)
    const next = freshRow()
    next.holder.begin(note.document, keptByNote(note))
    expect(next.store.getState().document.posts).toBe(7)
    expect(keptOf(next.holder.state()).id).toBe(keptOf(holder.state()).id)
    // A page that has never heard of this kind leaves the note as it is.
    expect(await readNote(storage, 'row')).toMatchObject({ kind: 'damaged', raw: storage.kept.get('pierglass.note.row') })
  })

  it('undo: one commit is one step, and brings its place on the shelf back', async () => {
    const { store, holder, setPosts } = freshRow()
    setPosts(3)
    const before = holder.state()
    const nine: PostRow = { ...rowKind.empty, posts: 9 }
    holder.open(nine, { id: 'other', document: null, place: null })
    store.temporal.getState().undo()
    expect(holder.state()).toMatchObject({ document: before.document, lineage: before.lineage })
    store.temporal.getState().undo()
    expect(store.getState().document.posts).toBe(2)
  })

  const shelf = async () => {
    const row = freshRow()
    const port = { ...memoryShelf(), kind: 'browser' as const }
    const storage = memoryStorage()
    const pierSide = freshStore()
    const set = freshShelf({ holder: row.holder, others: [pierHolder(pierSide)], port, storage })
    await set.shelf.refresh()
    row.setPosts(5)
    row.holder.setWords('North row', 'near the road')
    expect(await set.shelf.save()).toBe(true)
    return { row, pierSide, port, storage, ...set }
  }
  const only = (set: Awaited<ReturnType<typeof shelf>>) => set.shelf.state.getState().piers[0] ?? expect.fail('the shelf is empty')

  it('shelf: it is saved with its picture, opened, renamed, copied and compared for conflicts', async () => {
    const set = await shelf()
    expect(only(set)).toMatchObject({
      kind: 'whole',
      of: rowKind,
      name: 'North row',
      note: 'near the road',
      thumbnail: { box: [0, 0, 50, 10] },
    })
    expect(isKept(set.row.holder.state())).toBe(true)
    expect(only(set).id).toBe(keptOf(set.row.holder.state()).id)
    set.row.setPosts(6)
    expect(isKept(set.row.holder.state())).toBe(false)
    expect(await set.shelf.save()).toBe(true)
    expect(only(set)).toMatchObject({ record: { revision: 2 } })
    expect(await set.shelf.putWords(only(set).id, 'South row', '')).toBe(true)
    expect(set.row.store.getState().document).toMatchObject({ name: 'South row', posts: 6 })
    expect(await set.shelf.duplicate(only(set).id, 'A copy')).toBe(true)
    set.row.setPosts(8)
    expect(await set.shelf.openPier(only(set).id)).toBe(true)
    expect(set.row.store.getState().document.posts).toBe(6)
  })

  it('shelf: each kind goes to the page of its own', async () => {
    const set = await shelf()
    const pierShelf = freshShelf({ port: set.port, others: [set.row.holder], storage: set.storage })
    await pierShelf.shelf.refresh()
    editField(pierShelf.pier, 'hole.depth', '61 in')
    expect(await pierShelf.shelf.save()).toBe(true)
    expect(await pierShelf.shelf.openPier(only(set).id)).toBe(true)
    expect(set.row.store.getState().document.posts).toBe(5)
    expect(pierShelf.pier.getState().document.written['hole.depth']).toBe('61 in')
    // A page that knows piers alone shows it as one of a newer page, and never touches it.
    const old = freshShelf({ port: set.port })
    await old.shelf.refresh()
    expect(
      old.shelf.state
        .getState()
        .piers.map((one) => one.kind)
        .sort(),
    ).toEqual(['newer', 'whole'])
    expect(await old.shelf.openPier(only(set).id)).toBe(false)
  })

  it('file: a file of all and a file of one come back, and a file tells its kind by its mark', async () => {
    const set = await shelf()
    const text = set.shelf.exportText()
    const other = freshShelf({ holder: freshRow().holder, others: [pierHolder(freshStore())] })
    await other.shelf.importText(text)
    expect(other.shelf.state.getState()).toMatchObject({ said: { code: 'imported', added: 1 } })
    expect(other.shelf.exportText()).toBe(text)
    await other.shelf.importText(rowKind.write({ ...rowKind.empty, name: 'One' }))
    expect(
      other.shelf.state
        .getState()
        .piers.map(({ name }) => name)
        .sort(),
    ).toEqual(['North row', 'One'])
    expect((await readDocument(rowKind.write(rowKind.empty), bothKinds)).of).toBe(rowKind)
    expect((await readDocument(pierKind.write(pierKind.empty), bothKinds)).of).toBe(pierKind)
    const odd = await readDocument('{', bothKinds)
    expect(odd.read.ok).toBe(false)
  })

  it('migration: a file of its first version opens; one of a later version is refused; the gate of all files stands before it', async () => {
    const read = async (text: string) => (await rowKind.reader()).parse(text)
    const first = await read('{"plantedRow":1,"name":"Old","note":"","count":4,"marks":[]}')
    expect(first.ok && first.value).toEqual({ posts: 4, marks: [], name: 'Old', note: '' })
    const codes = async (text: string) => {
      const found = await read(text)
      return found.ok ? [] : found.issues.map(({ code }) => code)
    }
    expect(await codes('{"plantedRow":3}')).toEqual(['newer-schema'])
    expect(await codes('{"plantedRow":2,"posts":1,"posts":2,"marks":[],"name":"","note":""}')).toContain('duplicate-key')
    expect(await codes(`{"plantedRow":2,"x":${'['.repeat(40)}${']'.repeat(40)}}`)).toEqual(['file-too-deep'])
  })

  it('link: it has a letter of its own, holds neither words nor id, and is no pier', async () => {
    const { holder } = freshRow()
    const row = { ...rowKind.empty, posts: 12, name: 'Secret' }
    const href = addressOf(rowKind, row, 'http://pier.test/app/')
    expect(href).toContain('/#r=')
    const found = await documentIn(rowKind, hashOf(href))
    expect(found).toEqual({ kind: 'document', document: { ...rowKind.empty, posts: 12 }, issues: [] })
    expect(await documentIn(pierKind, hashOf(href))).toMatchObject({ kind: 'damaged' })
    expect(href).not.toContain(keptOf(holder.state()).id)
  })

  it('drafts: one that was left unsaved waits with its picture and opens in its own page', async () => {
    const set = await shelf()
    const left = freshRow()
    keepNote(left.holder, set.storage, { tab: 'gone', revision: 0, hash: () => '' })
    left.setPosts(11)
    keepNote(set.row.holder, set.storage, { tab: 'own', revision: 0, hash: () => '' })
    await set.shelf.refresh()
    await until(() => expect(set.shelf.state.getState().drafts).toHaveLength(1))
    expect(set.shelf.state.getState().drafts[0]).toMatchObject({ kind: 'draft', thumbnail: { box: [0, 0, 110, 10] } })
    await set.shelf.openDraft('gone')
    expect(set.row.store.getState().document.posts).toBe(11)
    expect(noteTabs(set.storage)).not.toContain('gone')
  })
})
