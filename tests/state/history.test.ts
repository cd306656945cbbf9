import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { valueAt } from '../../src/core/spec/path.ts'
import { visibleFields } from '../../src/core/spec/fields.ts'
import { reset } from '../../src/state/actions/document.ts'
import { commitDraft } from '../../src/state/actions/draft.ts'
import { dragField } from '../../src/state/actions/drag.ts'
import { editField, pickChoice, switchPart } from '../../src/state/actions/edit.ts'
import { canRedo, canUndo, redo, undo } from '../../src/state/actions/history.ts'
import { pointAt, setUnits } from '../../src/state/actions/view.ts'
import type { PierStore } from '../../src/state/store.ts'
import { freshStore } from './freshStore.ts'

const texts = ['18', '24 in', `3'-0"`, '0.9 m', '', 'x', '5%', '10:1', '2', '120', '-3', '1e9', '4000 psi', '30 deg']

/** One thing that a person might do next. `a`, `b`: whole numbers that pick what. */
const act = (store: PierStore, kind: number, a: number, b: number): void => {
  const fields = visibleFields(store.getState().document.spec)
  const field = fields[a % fields.length]
  if (!field) return
  if (kind === 0) undo(store)
  else if (kind === 1) redo(store)
  else if (kind === 2) pointAt(store, b % 2 ? 'concrete' : null)
  else if (kind === 3) setUnits(store, b % 2 ? 'us' : 'metric')
  else if (kind === 4 && b % 50 === 0) reset(store)
  else if (field.type === 'number' && kind % 2 === 0) {
    for (let i = 0; i < 3; i++) dragField(store, field.path, field.min + ((field.max - field.min) * ((b + i) % 97)) / 96)
    commitDraft(store)
  } else if (field.type === 'number') editField(store, field.path, texts[b % texts.length] ?? '')
  else if (field.type === 'choice') pickChoice(store, field.path, field.choices[b % field.choices.length] ?? '')
  else switchPart(store, field.path, valueAt(store.getState().document.spec, field.path) === null)
}

describe('[J5] undo', () => {
  it('walks a thousand random steps back to the start and forward again', () => {
    const steps = 1000
    const runs = 3
    let kept = 0
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(11), fc.nat(999), fc.nat(999)), { minLength: steps, maxLength: steps }), (walk) => {
        const store = freshStore()
        const start = store.getState().document
        let depth = 0
        store.subscribe((state) => {
          expect(Object.isFrozen(state.document.spec)).toBe(true)
        })
        for (const [kind, a, b] of walk) {
          act(store, kind, a, b)
          depth = Math.max(depth, store.temporal.getState().pastStates.length)
        }
        const end = store.getState().document
        kept = Math.max(kept, depth)
        const trail = [end]
        while (canUndo(store)) {
          undo(store)
          trail.push(store.getState().document)
        }
        if (depth < 500) expect(store.getState().document).toBe(start)
        for (const document of trail.toReversed()) {
          expect(store.getState().document).toBe(document)
          if (canRedo(store)) redo(store)
        }
        expect(store.getState().document).toBe(end)
      }),
      { numRuns: runs, seed: 20 },
    )
    expect(kept).toBeGreaterThan(50)
  })

  it('forgets the future when something new is done', () => {
    const store = freshStore()
    editField(store, 'hole.diameter', '22 in')
    undo(store)
    expect(canRedo(store)).toBe(true)
    editField(store, 'hole.diameter', '24 in')
    expect(canRedo(store)).toBe(false)
  })
})
