import fc from 'fast-check'
import { bracketKinds, fillKinds } from '../src/core/kinds/index.ts'
import type { Field } from '../src/core/model/field.ts'
import type { PierDocument } from '../src/core/model/spec.ts'
import { defaultDocument } from '../src/core/spec/defaults.ts'
import { setChoice, setField, setNumber, setPart } from '../src/core/spec/edit.ts'
import { visibleFields } from '../src/core/spec/fields.ts'
import { valueAt } from '../src/core/spec/path.ts'
import { fromSI, unitsOf } from '../src/core/units/factors.ts'

/** One edit: a field picked from those the pier shows, where in its range to go, and how to write it. */
type Step = Readonly<{ pick: number; share: number; typed: boolean; unit: number }>

const arbitraryStep: fc.Arbitrary<Step> = fc.record({
  pick: fc.nat({ max: 9999 }),
  share: fc.oneof(
    { weight: 1, arbitrary: fc.constantFrom(0, 1) },
    { weight: 5, arbitrary: fc.integer({ min: 0, max: 10_000 }).map((part) => part / 10_000) },
  ),
  typed: fc.boolean(),
  unit: fc.nat({ max: 99 }),
})

/** A value in the field's range, whole for a count. */
const inRange = ({ min, max, quantity }: Extract<Field, { type: 'number' }>, share: number): number => {
  const value = min + (max - min) * share
  return quantity === 'count' ? Math.round(value) : value
}

function taken(document: PierDocument, { pick, share, typed, unit }: Step): PierDocument {
  const shown = visibleFields(document.spec)
  const field = shown[pick % shown.length]
  if (field === undefined) return document
  const edit = () => {
    if (field.type === 'choice' && field.nullable && share > 0.8) return setChoice(document, field.path, null)
    if (field.type === 'choice')
      return setChoice(document, field.path, field.choices[Math.floor(share * 0.999 * field.choices.length)] ?? '')
    if (field.type === 'part') return setPart(document, field.path, valueAt(document.spec, field.path) === null)
    if (field.nullable && share > 0.8) return setNumber(document, field.path, null)
    const value = inRange(field, share)
    const units = unitsOf[field.quantity]
    const id = units[unit % units.length]
    const isTyped = typed && field.quantity !== 'count' && field.quantity !== 'slope' && id !== undefined && id !== '1'
    return isTyped
      ? setField(document, field.path, `${Number(fromSI(value, id).toPrecision(4))} ${id}`, 'us')
      : setNumber(document, field.path, value)
  }
  const result = edit()
  return result.ok ? result.value : document
}

const chosen = (document: PierDocument, path: string, choice: string): PierDocument => {
  const result = setChoice(document, path, choice)
  return result.ok ? result.value : document
}

/**
 * A walk of edits over all fields that a pier shows, from one of every fill kind: each document on the way is valid, as an edit is kept
 * only if what comes of it can be built.
 */
export const arbitraryWalk = (): fc.Arbitrary<readonly PierDocument[]> =>
  fc
    .record({
      kind: fc.constantFrom(...fillKinds.map((one) => one.id)),
      bracket: fc.constantFrom(...bracketKinds.map((one) => one.id)),
      steps: fc.array(arbitraryStep, { maxLength: 60, size: 'max' }),
      name: fc.string({ maxLength: 20 }),
      note: fc.string({ maxLength: 40 }),
    })
    .map(({ kind, bracket, steps, name, note }) => {
      const filled = chosen({ ...defaultDocument, name, note }, 'fill.kind', kind)
      const walk = [filled.spec.support.kind === 'bracket' ? chosen(filled, 'support.bracket.kind', bracket) : filled]
      for (const step of steps) walk.push(taken(walk[walk.length - 1] ?? filled, step))
      return walk
    })

/** Valid documents of every fill kind, at the end of such a walk. Bounds of fields come up often; so do typed units of both systems. */
export const arbitraryPier = (): fc.Arbitrary<PierDocument> => arbitraryWalk().map((walk) => walk[walk.length - 1] ?? defaultDocument)
