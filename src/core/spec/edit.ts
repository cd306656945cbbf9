import type { Field, FieldOf } from '../model/field.ts'
import type { Issue, Result } from '../model/issue.ts'
import type { Callout, PierDocument, PierSpec, SoilMechanism } from '../model/spec.ts'
import { inputUnit, unitNames } from '../units/factors.ts'
import { parseQuantity } from '../units/parse.ts'
import type { UnitSystem } from '../units/quantity.ts'
import { withChoice } from './choose.ts'
import { fieldAt } from './fields.ts'
import type { IssueCode } from './issueCodes.ts'
import { partInitial } from './partInitial.ts'
import { valueAt, withValueAt } from './path.ts'
import { pierFields } from './pier/pier.ts'
import { broughtBack, otherKindsAfter } from './otherKinds.ts'
import { originsAfter, originsGiven } from './origins.ts'
import { settled } from './settle.ts'
import { makeDocument } from './validate.ts'
import { withUnit } from './written.ts'

// A refused edit gives the issues and no document. Each edit is one step: all that follows from it comes with it.

const refuse = (code: IssueCode, path: string, facts: Partial<Issue> = {}): Result<PierDocument> => ({
  ok: false,
  issues: [{ code, severity: 'error', path, ...facts }],
})

/** The shown field of this type at `path`; undefined when the pier has none. */
function shownField<T extends Field['type']>(spec: PierSpec, path: string, type: T): FieldOf<T> | undefined {
  const field = fieldAt(spec, path)
  return field?.type === type ? (field as FieldOf<T>) : undefined
}

const without = (written: PierDocument['written'], path: string): PierDocument['written'] => {
  const { [path]: _, ...rest } = written
  return rest
}

/** The document with what a change gives at `given`; what else the change moved is no longer anybody's. */
function changed(document: PierDocument, spec: PierSpec, given: string): Result<PierDocument> {
  const { pier, written, origins } = broughtBack(document, spec)
  return makeDocument({
    ...document,
    spec,
    written: { ...document.written, ...written },
    origins: originsAfter(document, spec, [given], { spec: pier, origins }),
    otherKinds: otherKindsAfter(document, spec),
  })
}

/** The document with one value put in place, which moves nothing else. */
const put = (document: PierDocument, field: Field, value: unknown, written: PierDocument['written']): Result<PierDocument> => {
  const spec = withValueAt(document.spec, field.path, value)
  return makeDocument({ ...document, spec, written, origins: originsGiven(document, spec, field) })
}

/** Types `text` into the number field at `path`; a bare number has the unit that the field is shown in. Empty text clears a nullable field. */
export function setField(document: PierDocument, path: string, text: string, system: UnitSystem): Result<PierDocument> {
  const field = shownField(document.spec, path, 'number')
  if (field === undefined) return refuse('not-a-field', path, { got: path })
  const { quantity } = field
  const bare = field.unit?.[system] ?? inputUnit[system][quantity]
  if (field.nullable && text.trim() === '') return setNumber(document, path, null)
  const reading = parseQuantity(text, quantity, bare)
  if (!reading.ok) return refuse(reading.code, path, { got: text.slice(0, 80), limit: unitNames(quantity), quantity })
  const written = { ...document.written, [path]: withUnit(text, quantity, bare) }
  return put(document, field, reading.value, written)
}

/** Puts an SI number (a slider's) into the number field at `path`; null clears a nullable field. */
export function setNumber(document: PierDocument, path: string, value: number | null): Result<PierDocument> {
  const field = shownField(document.spec, path, 'number')
  if (field === undefined) return refuse('not-a-field', path, { got: path })
  return put(document, field, value, without(document.written, path))
}

/** Switches an optional part on, with values that fit this pier, or off. On again when it is on: nothing changes. */
export function setPart(document: PierDocument, path: string, on: boolean): Result<PierDocument> {
  const { spec } = document
  const field = shownField(spec, path, 'part')
  if (field === undefined) return refuse('not-a-field', path, { got: path })
  const there = valueAt(spec, path) !== null
  if (on === there) return makeDocument(document)
  if (!on) return changed(document, withValueAt(spec, path, null), path)
  const next = withValueAt(spec, path, partInitial(spec, path, field.initial))
  const fitted = settled(
    next,
    (moved) => moved.startsWith(path) || moved === 'support.foot',
    () => false,
  )
  return changed(document, fitted, path)
}

/**
 * Picks one of a choice field's choices, with all that follows: another fill brings its support, another soil its values. Null clears a
 * nullable field.
 */
export function setChoice(document: PierDocument, path: string, choice: string | number | null): Result<PierDocument> {
  const field = shownField(document.spec, path, 'choice')
  if (field === undefined) return refuse('not-a-field', path, { got: path })
  if (choice === null && field.nullable) return put(document, field, null, document.written)
  if (choice === null) return refuse('not-a-choice', path, { got: '', limit: field.choices.join(', ') })
  if (!field.choices.includes(choice)) return refuse('not-a-choice', path, { got: String(choice), limit: field.choices.join(', ') })
  return changed(document, withChoice(document.spec, path, choice, document.otherKinds), path)
}

const { number, date, notes } = pierFields.fields.callout.fields
/** Words of a drawing that stay in the file, and the most characters each may have. */
export const calloutTexts = { number: number.most, date: date.most, notes: notes.most } as const satisfies Partial<
  Readonly<Record<keyof Callout, number>>
>
export type CalloutText = keyof typeof calloutTexts

/** Puts the number, the date or the notes of the drawing in place. Refused without a callout, and when it is too long. */
export function setCalloutText(document: PierDocument, key: CalloutText, text: string): Result<PierDocument> {
  const { spec } = document
  const path = `callout.${key}`
  const limit = calloutTexts[key]
  if (spec.callout === null) return refuse('not-a-field', path, { got: path })
  if (text.length > limit) return refuse('text-too-long', path, { got: text.length, limit })
  return makeDocument({ ...document, spec: { ...spec, callout: { ...spec.callout, [key]: text } } })
}

const { least: shortestReason, most } = pierFields.fields.judgement.fields.reason
/** The most characters that a reason may have. */
export const longestReason = most

/**
 * Uses a soil mechanism other than the least one, for a reason that is typed; null goes back to the least. The reason stays in the file and
 * is never in a link.
 */
export function setJudgement(document: PierDocument, mechanism: SoilMechanism | null, reason: string): Result<PierDocument> {
  const judged = (judgement: PierSpec['judgement']) => makeDocument({ ...document, spec: { ...document.spec, judgement } })
  if (mechanism === null) return judged(null)
  const text = reason.trim()
  const path = 'judgement.reason'
  if (text.length < shortestReason) return refuse('reason-too-short', path, { got: text.length, limit: shortestReason })
  if (text.length > longestReason) return refuse('text-too-long', path, { got: text.length, limit: longestReason })
  return judged({ mechanism, reason: text })
}
