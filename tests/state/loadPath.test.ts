import { describe, expect, it } from 'vitest'
import { whatIf } from '../../src/core/derive/whatIf/whatIf.ts'
import type { PierDocument } from '../../src/core/model/spec.ts'
import { setChoice, setField, setPart } from '../../src/core/spec/edit.ts'
import { judge } from '../../src/state/actions/judgement.ts'
import { dragField } from '../../src/state/actions/drag.ts'
import { editField } from '../../src/state/actions/edit.ts'
import { canUndo, undo } from '../../src/state/actions/history.ts'
import { openLink, setPull } from '../../src/state/actions/view.ts'
import { derived, shownResult } from '../../src/state/derived.ts'
import { encodeLink } from '../../src/state/storage/link.ts'
import { applySuggestion, suggestionSteps, suggestionsKnown } from '../../src/state/suggestions.ts'
import { soundDocument } from '../soundPier.ts'
import { freshStore } from './freshStore.ts'

const must = (result: ReturnType<typeof setChoice>): PierDocument => {
  if (!result.ok) throw new Error(JSON.stringify(result.issues))
  return result.value
}
/** A bell so high that the upright bars are developed past its neck. */
const belled = must(setField(must(setPart(soundDocument, 'hole.bell', true)), 'hole.bell.height', '16 in', 'us'))
const dry = must(setChoice(soundDocument, 'fill.kind', 'dry-full-height'))

describe('[L5] another way to count the ground', () => {
  const reason = 'Boring B-2 found dense sand down to 9 ft'

  it('is one undo step, with its reason, and changes the number', () => {
    const store = freshStore(belled)
    const least = shownResult(store.getState()).uplift
    expect(judge(store, 'cone-over-ledge', `  ${reason} `)).toEqual([])
    expect(store.getState().document.spec.judgement).toEqual({ mechanism: 'cone-over-ledge', reason })
    expect(shownResult(store.getState()).uplift.soil).toBe('cone-over-ledge')
    expect(shownResult(store.getState()).uplift.allowable).toBeGreaterThan(least.allowable ?? Number.POSITIVE_INFINITY)
    undo(store)
    expect(store.getState().document).toBe(belled)
    expect(canUndo(store)).toBe(false)
  })

  it.each(['', '          ', 'too short', '  123456789  '])('is refused without a reason: "%s"', (short) => {
    const store = freshStore(belled)
    expect(judge(store, 'cone-over-ledge', short).map((issue) => issue.code)).toEqual(['reason-too-short'])
    expect(store.getState().document).toBe(belled)
    expect(canUndo(store)).toBe(false)
  })

  it('goes back to the least without a word', () => {
    const store = freshStore(belled)
    expect(judge(store, null, '')).toEqual([])
    expect(canUndo(store)).toBe(false)
    judge(store, 'breakout-of-ledge', reason)
    expect(judge(store, null, '')).toEqual([])
    expect(store.getState().document.spec.judgement).toBeNull()
    undo(store)
    expect(store.getState().document.spec.judgement?.reason).toBe(reason)
  })

  it('keeps the reason out of the link', () => {
    const store = freshStore(belled)
    const before = encodeLink(store.getState().document)
    judge(store, 'cone-over-ledge', reason)
    expect(encodeLink(store.getState().document)).toBe(before)
  })
})

describe('[L6] what changes the number most', () => {
  it('is worked out in steps, once for each spec, and is what the core says', () => {
    const { spec } = freshStore(soundDocument).getState().document
    expect(suggestionsKnown(spec)).toBeNull()
    const steps = [...suggestionSteps(spec)]
    expect(steps.length).toBeGreaterThan(4)
    expect(suggestionsKnown(spec)).toEqual(whatIf(spec))
    expect([...suggestionSteps(spec)]).toEqual([])
  })

  it('has nothing to say of a chain without a capacity', () => {
    expect([...suggestionSteps(dry.spec)]).toEqual([])
    expect(suggestionsKnown(dry.spec)).toEqual([])
  })

  it('is built as one undo step and gives what was said', () => {
    const store = freshStore(soundDocument)
    editField(store, 'hole.depth', `4'-2"`)
    const { spec } = store.getState().document
    for (const _ of suggestionSteps(spec));
    const first = suggestionsKnown(spec)?.[0] ?? expect.fail('nothing found')
    expect(applySuggestion(store, spec, first)).toBe(true)
    expect(derived(store.getState().document.spec).uplift.allowable).toBe(first.allowable)
    undo(store)
    expect(store.getState().document.spec).toBe(spec)
    expect(store.getState().document.written['hole.depth']).toBe(`4'-2"`)
  })

  it('is not built on another pier than it was worked out for', () => {
    const store = freshStore(soundDocument)
    const { spec } = store.getState().document
    for (const _ of suggestionSteps(spec));
    const first = suggestionsKnown(spec)?.[0] ?? expect.fail('nothing found')
    dragField(store, 'hole.depth', 1.4)
    expect(applySuggestion(store, spec, first)).toBe(false)
    expect(store.getState().document.spec.hole.depth).toBe(1.4)
  })
})

describe('[L7] a pull to look at', () => {
  it('is no part of the pier', () => {
    const store = freshStore(soundDocument)
    setPull(store, 4000)
    openLink(store, 'bar-through-post')
    expect(store.getState().view).toMatchObject({ pull: 4000, openLink: 'bar-through-post' })
    expect(store.getState().document).toBe(soundDocument)
    expect(canUndo(store)).toBe(false)
  })

  it('is a number that is nothing or more, or none', () => {
    const store = freshStore(soundDocument)
    for (const pull of [Number.NaN, Number.POSITIVE_INFINITY]) {
      setPull(store, pull)
      expect(store.getState().view.pull).toBeNull()
    }
    setPull(store, -5)
    expect(store.getState().view.pull).toBe(0)
    setPull(store, null)
    expect(store.getState().view.pull).toBeNull()
  })
})
