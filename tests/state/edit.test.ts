import { describe, expect, it } from 'vitest'
import { toSI } from '../../src/core/units/factors.ts'
import { dropEntry } from '../../src/state/actions/commit.ts'
import { openDocument, reset, setName } from '../../src/state/actions/document.ts'
import { commitDraft, dropDraft } from '../../src/state/actions/draft.ts'
import { dragField } from '../../src/state/actions/drag.ts'
import { editField, pickChoice, switchPart, setValue } from '../../src/state/actions/edit.ts'
import { canUndo, redo, undo } from '../../src/state/actions/history.ts'
import { pointAt, setCut, setExplode, setLayer, setTheme, setUnits, widestCut } from '../../src/state/actions/view.ts'
import { derived, shownResult } from '../../src/state/derived.ts'
import { close } from '../close.ts'
import { freshStore } from './freshStore.ts'

const past = (store: ReturnType<typeof freshStore>): number => store.temporal.getState().pastStates.length
const inch = (value: number): number => toSI(value, 'in')

describe('[J1] entering a value', () => {
  it.each([
    ['18', 18],
    ['18 in', 18],
    [`1'-6"`, 18],
    ['457.2 mm', 18],
    ['0.4572 m', 18],
  ])('reads %s', (text, inches) => {
    const store = freshStore()
    expect(editField(store, 'hole.diameter', text)).toBe(true)
    close(store.getState().document.spec.hole.diameter, inch(inches), { abs: 1e-12, rel: 0 })
    expect(past(store)).toBe(1)
  })

  it('takes a bare number in the units on show', () => {
    const store = freshStore()
    setUnits(store, 'metric')
    editField(store, 'hole.diameter', '500')
    close(store.getState().document.spec.hole.diameter, 0.5, { abs: 1e-12, rel: 0 })
  })

  it.each(['900 in', '2 in', 'a bucket', '', '18 psi', 'NaN', '-18'])('refuses %j: the last good pier stays, and why is kept', (text) => {
    const store = freshStore()
    const { document } = store.getState()
    expect(editField(store, 'hole.diameter', text)).toBe(false)
    expect(store.getState().document).toBe(document)
    expect(store.getState().entries['hole.diameter']?.text).toBe(text)
    expect(store.getState().refused.length).toBeGreaterThan(0)
    expect(canUndo(store)).toBe(false)
    editField(store, 'hole.diameter', '22 in')
    expect(store.getState().refused).toEqual([])
  })

  it('keeps refused entries of other fields until they are put right, dropped or undone', () => {
    const store = freshStore()
    editField(store, 'hole.diameter', '900 in')
    editField(store, 'hole.depth', 'deep')
    editField(store, 'post.heightAboveGrade', '100 in')
    expect(Object.keys(store.getState().entries).sort()).toEqual(['hole.depth', 'hole.diameter'])
    dropEntry(store, 'hole.depth')
    expect(Object.keys(store.getState().entries)).toEqual(['hole.diameter'])
    undo(store)
    expect(store.getState().entries).toEqual({})
  })

  it('makes no undo step of an entry that changes nothing', () => {
    const store = freshStore()
    editField(store, 'hole.diameter', '22 in')
    editField(store, 'hole.diameter', '22 in')
    expect(past(store)).toBe(1)
  })

  it('switches parts, choices and values that may be left out', () => {
    const store = freshStore()
    expect(switchPart(store, 'hole.bell', true)).toBe(true)
    expect(store.getState().document.spec.hole.bell).not.toBeNull()
    expect(pickChoice(store, 'post.section', '4x4')).toBe(true)
    expect(setValue(store, 'site.waterTable', 0.6)).toBe(true)
    expect(store.getState().document.spec.site.waterTable).toBe(0.6)
    expect(setValue(store, 'site.waterTable', null)).toBe(true)
    expect(store.getState().document.spec.site.waterTable).toBeNull()
    expect(past(store)).toBe(4)
    expect(pickChoice(store, 'post.section', '99x99')).toBe(false)
    expect(past(store)).toBe(4)
  })
})

describe('[J2] dragging', () => {
  it('shows a draft at every move and makes one undo step of the gesture', () => {
    const store = freshStore()
    const { document } = store.getState()
    for (const inches of [21, 22, 23, 24]) {
      dragField(store, 'hole.diameter', inch(inches))
      expect(store.getState().document).toBe(document)
      close(store.getState().draft?.spec.hole.diameter ?? 0, inch(inches), { abs: 1e-12, rel: 0 })
    }
    commitDraft(store)
    expect(store.getState().draft).toBeNull()
    expect(past(store)).toBe(1)
    undo(store)
    expect(store.getState().document).toBe(document)
  })

  it('stops at the last pier that can be built, says why, and lets the text box alone', () => {
    const store = freshStore()
    dragField(store, 'bars.length', inch(18))
    dragField(store, 'bars.length', inch(70))
    expect(store.getState().entries['bars.length']?.text).toBeNull()
    close(store.getState().draft?.spec.bars?.length ?? 0, inch(18), { abs: 1e-12, rel: 0 })
    commitDraft(store)
    close(store.getState().document.spec.bars?.length ?? 0, inch(18), { abs: 1e-12, rel: 0 })
  })

  it('is given up without a trace', () => {
    const store = freshStore()
    dragField(store, 'hole.depth', inch(60))
    dropDraft(store)
    expect(store.getState().draft).toBeNull()
    commitDraft(store)
    expect(canUndo(store)).toBe(false)
  })

  it('is settled by an entry elsewhere, as a step of its own', () => {
    const store = freshStore()
    dragField(store, 'hole.depth', inch(60))
    editField(store, 'hole.diameter', '24 in')
    close(store.getState().document.spec.hole.depth, inch(60), { abs: 1e-12, rel: 0 })
    close(store.getState().document.spec.hole.diameter, inch(24), { abs: 1e-12, rel: 0 })
    expect(past(store)).toBe(2)
  })

  it('makes one draft a frame where there are frames', () => {
    const frames: (() => void)[] = []
    const holder = globalThis as { requestAnimationFrame?: unknown; cancelAnimationFrame?: unknown }
    holder.requestAnimationFrame = (task: () => void) => frames.push(task)
    holder.cancelAnimationFrame = () => undefined
    try {
      const store = freshStore()
      let drafts = 0
      store.subscribe((state, before) => void (state.draft !== before.draft && drafts++))
      for (let i = 0; i < 50; i++) dragField(store, 'hole.depth', inch(50 + i / 10))
      expect(drafts).toBe(0)
      for (const frame of frames) frame()
      expect(drafts).toBe(1)
      close(store.getState().draft?.spec.hole.depth ?? 0, inch(54.9), { abs: 1e-12, rel: 0 })
    } finally {
      delete holder.requestAnimationFrame
      delete holder.cancelAnimationFrame
    }
  })
})

describe('[J3] looking round', () => {
  it('is never undone and never stored with the pier', () => {
    const store = freshStore()
    editField(store, 'hole.diameter', '22 in')
    setCut(store, { open: 1 as never, facing: 7 as never })
    setLayer(store, 'soil', false)
    setTheme(store, 'dark')
    setExplode(store, 0.5)
    pointAt(store, 'concrete')
    expect(past(store)).toBe(1)
    undo(store)
    const { view } = store.getState()
    expect(view.theme).toBe('dark')
    expect(view.layers.soil).toBe(false)
    expect(view.pointedAt).toBe('concrete')
  })

  it('holds the cut between whole and its widest, in one turn, and drops what is no number', () => {
    const store = freshStore()
    setCut(store, { open: 99 as never, facing: -1 as never })
    const { cut } = store.getState().view
    expect(cut.open).toBe(widestCut)
    close(cut.facing, 2 * Math.PI - 1, { abs: 1e-12, rel: 0 })
    setCut(store, { open: Number.NaN as never, facing: 0 as never })
    expect(store.getState().view.cut).toBe(cut)
    setExplode(store, Number.POSITIVE_INFINITY)
    expect(store.getState().view.explode).toBe(0)
  })
})

describe('[J4] whole documents', () => {
  it('come and go as one undo step each', () => {
    const store = freshStore()
    editField(store, 'hole.diameter', '22 in')
    const mine = store.getState().document
    setName(store, 'Shed, north corner')
    reset(store)
    expect(past(store)).toBe(3)
    undo(store)
    undo(store)
    expect(store.getState().document).toBe(mine)
    redo(store)
    expect(store.getState().document.name).toBe('Shed, north corner')
    openDocument(store, mine)
    expect(store.getState().document).toBe(mine)
  })

  it('give one result for one spec, the draft while there is one', () => {
    const store = freshStore()
    const { document } = store.getState()
    expect(derived(document.spec)).toBe(derived(document.spec))
    expect(shownResult(store.getState())).toBe(derived(document.spec))
    dragField(store, 'hole.diameter', inch(30))
    expect(shownResult(store.getState()).hole.volume.value).toBeGreaterThan(derived(document.spec).hole.volume.value)
  })

  it('carry the warnings of their pier', () => {
    const store = freshStore()
    pickChoice(store, 'fill.kind', 'dry-full-height')
    expect(shownResult(store.getState()).issues.map((issue) => issue.code)).toContain('dry-mix-not-verifiable')
  })
})
