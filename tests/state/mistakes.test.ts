import { describe, expect, it } from 'vitest'
import { openDocument } from '../../src/state/actions/document.ts'
import { putRight, setMistake } from '../../src/state/actions/view.ts'
import { encodeLink } from '../../src/state/storage/link.ts'
import { decodeLink } from '../../src/state/storage/readLink.ts'
import { defaultDocument } from '../../src/core/spec/defaults.ts'
import { withMistakes } from '../../src/core/derive/build/mistakes.ts'
import { derived, meantResult, shownDocument, shownResult, shownSpec } from '../../src/state/derived.ts'
import { freshStore } from './freshStore.ts'

const hole = (store: ReturnType<typeof freshStore>) => shownResult(store.getState()).hole.volume.value

describe('a pier shown with mistakes', () => {
  it('changes what is shown and no document, and is no step to undo', () => {
    const store = freshStore()
    const { document } = store.getState()
    const before = shownResult(store.getState())
    setMistake(store, 'undersized-hole', true)
    expect(hole(store)).toBeLessThan(before.hole.volume.value)
    expect(store.getState().document).toBe(document)
    expect(shownDocument(store.getState())).toBe(document)
    expect(meantResult(store.getState())).toBe(before)
    expect(store.temporal.getState().pastStates).toEqual([])
  })

  it('put right gives the same result object back, and so does the same mistake made again', () => {
    const store = freshStore()
    const before = shownResult(store.getState())
    setMistake(store, 'undersized-hole', true)
    const wrong = shownResult(store.getState())
    expect(shownResult(store.getState())).toBe(wrong)
    putRight(store)
    expect(shownResult(store.getState())).toBe(before)
    setMistake(store, 'undersized-hole', true)
    expect(shownResult(store.getState())).toBe(wrong)
    setMistake(store, 'undersized-hole', false)
    expect(shownSpec(store.getState())).toBe(store.getState().document.spec)
  })

  it('does not care for the order in which mistakes are made', () => {
    const [one, other] = [freshStore(), freshStore()]
    for (const id of ['undersized-hole', 'low-fill'] as const) setMistake(one, id, true)
    for (const id of ['low-fill', 'undersized-hole'] as const) setMistake(other, id, true)
    expect(shownSpec(one.getState())).toBe(shownSpec(other.getState()))
    expect(shownResult(one.getState())).not.toBe(derived(one.getState().document.spec))
  })

  it('ends when another pier is opened', () => {
    const store = freshStore()
    setMistake(store, 'undersized-hole', true)
    openDocument(store, { ...store.getState().document, name: 'Shed' })
    expect(store.getState().view.mistakes).toEqual([])
  })
})

describe('loose soil left in the hole', () => {
  it('goes through a link as it is', () => {
    const bare = { ...defaultDocument.spec, hole: { ...defaultDocument.spec.hole, base: null } }
    const spec = withMistakes(bare, ['loose-bottom'])
    expect(spec.hole.base?.material).toBe('loose-soil')
    const read = decodeLink(encodeLink({ ...defaultDocument, spec, written: {} }))
    expect(read.ok && read.value.spec.hole.base?.material).toBe('loose-soil')
    expect(read.ok && read.value.spec.hole.base?.thickness).toBeCloseTo(spec.hole.base?.thickness ?? Number.NaN, 12)
  })
})
