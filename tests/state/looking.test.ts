import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { defaultDocument } from '../../src/core/spec/defaults.ts'
import { enterCalloutText } from '../../src/state/actions/callout.ts'
import { setName } from '../../src/state/actions/document.ts'
import { commitDraft } from '../../src/state/actions/draft.ts'
import { dragField } from '../../src/state/actions/drag.ts'
import { editField, pickChoice, switchPart, setValue } from '../../src/state/actions/edit.ts'
import { canUndo, redo, undo } from '../../src/state/actions/history.ts'
import { judge } from '../../src/state/actions/judgement.ts'
import { lookAt, stopLooking, takeLooked } from '../../src/state/actions/look.ts'
import { linkIn, linkTo } from '../../src/state/storage/address.ts'
import { seenDocument } from '../../src/state/derived.ts'
import { startSession } from '../../src/state/storage/session.ts'
import { fakePage, freshStore, memoryStorage } from './freshStore.ts'
import { until } from '../until.ts'

const codes = (store: ReturnType<typeof freshStore>): string[] => store.getState().notices.map((notice) => notice.code)

/** A session in which one value was set, and what it left behind. */
const session = async (depth: string, name = '') => {
  const storage = memoryStorage()
  const page = fakePage()
  const store = freshStore()
  await startSession(store, page, storage)
  editField(store, 'hole.depth', depth)
  if (name) setName(store, name)
  const { document } = store.getState()
  return { storage, document, hash: new URL(linkTo(document, page.location.href)).hash }
}

beforeEach(() => void vi.useFakeTimers())
afterEach(() => void vi.useRealTimers())

describe('[J11] a link is looked at first, and never takes the place of the open pier by itself', () => {
  const looked = async () => {
    const first = await session('50 in', 'Mine')
    const other = await session('60 in')
    const page = fakePage(other.hash)
    const store = freshStore()
    await startSession(store, page, first.storage)
    return { first, other, page, store }
  }

  it('opens before the last session: its document, note and undo steps stay as they were', async () => {
    const { first, other, store } = await looked()
    expect(seenDocument(store.getState()).spec).toEqual(other.document.spec)
    expect(store.getState().document).toEqual(first.document)
    const before = new Map(first.storage.kept)
    stopLooking(store)
    expect(seenDocument(store.getState())).toEqual(first.document)
    expect([...first.storage.kept]).toEqual([...before])
    expect(canUndo(store)).toBe(false)
    expect(codes(store)).toEqual([])
  })

  it('can be changed by nothing until it is taken', async () => {
    const { first, other, store } = await looked()
    const { looking, document } = store.getState()
    const before = new Map(first.storage.kept)
    editField(store, 'hole.depth', '44 in')
    editField(store, 'hole.depth', 'abc')
    switchPart(store, 'callout', true)
    pickChoice(store, 'fill.kind', 'soil-only')
    setValue(store, 'hole.depth', 1)
    dragField(store, 'hole.diameter', 0.5)
    commitDraft(store)
    setName(store, 'Another')
    enterCalloutText(store, 'number', 'S-1')
    judge(store, 'friction-and-weight', 'because')
    redo(store)
    expect(store.getState()).toMatchObject({ refused: [], entries: {}, draft: null })
    expect(store.getState().looking).toBe(looking)
    expect(store.getState().document).toBe(document)
    expect([...first.storage.kept]).toEqual([...before])
    takeLooked(store)
    expect(editField(store, 'hole.depth', '44 in')).toBe(true)
    expect(store.getState().document.spec.hole.depth).toBeCloseTo(44 * 0.0254, 12)
    expect(store.getState().document.spec.hole.diameter).toBe(other.document.spec.hole.diameter)
  })

  it('goes back with one undo, and is no step of it', async () => {
    const { page, other } = await looked()
    const store = freshStore()
    await startSession(store, fakePage(), memoryStorage())
    editField(store, 'hole.depth', '50 in')
    const mine = store.getState().document
    lookAt(store, other.document)
    undo(store)
    expect(seenDocument(store.getState())).toBe(mine)
    undo(store)
    expect(store.getState().document).toBe(defaultDocument)
    expect(page.location.hash).toBe(other.hash)
  })

  it('keeps the address at the pier on the page', async () => {
    const { first, other, page, store } = await looked()
    vi.advanceTimersByTime(1000)
    expect(page.location.hash).toBe(other.hash)
    stopLooking(store)
    vi.advanceTimersByTime(1000)
    expect(page.location.hash).toBe(first.hash)
  })

  it('pasted into the open page shows its pier; one of the open pier itself shows that', async () => {
    const { first, other, page, store } = await looked()
    page.go(first.hash)
    await until(() => expect(store.getState().looking).toBeNull())
    page.go(other.hash)
    await until(() => expect(store.getState().looking?.spec).toEqual(other.document.spec))
    page.go('#p=1garbage')
    await until(() => expect(codes(store)).toContain('link-damaged'))
    expect(store.getState().looking?.spec).toEqual(other.document.spec)
    page.go('#elsewhere')
    await linkIn(page.location.hash)
    expect(store.getState().document).toEqual(first.document)
  })
})
