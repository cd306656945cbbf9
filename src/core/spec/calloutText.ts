import type { Result } from '../model/issue.ts'
import type { Callout, PierDocument } from '../model/spec.ts'
import { calloutFields } from './pier/callout.ts'
import { makeDocument } from './validate.ts'

const { number, date, notes } = calloutFields.fields
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
  if (spec.callout === null) return { ok: false, issues: [{ code: 'not-a-field', severity: 'error', path, got: path }] }
  if (text.length > limit) return { ok: false, issues: [{ code: 'text-too-long', severity: 'error', path, got: text.length, limit }] }
  return makeDocument({ ...document, spec: { ...spec, callout: { ...spec.callout, [key]: text } } })
}
