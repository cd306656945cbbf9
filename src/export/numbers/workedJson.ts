import type { Worked } from '../../core/model/worked.ts'
import { answerWords } from '../../facts/answerWords.ts'
import { inWords, unitOf } from './named.ts'

/** One number with its formula and all that went in. */
export const workedJson = (one: Worked) => ({
  id: one.id,
  label: answerWords(one.id).label,
  value: one.value,
  unit: unitOf(one.quantity),
  text: inWords(one.value, one.quantity),
  formula: one.formula,
  inputs: one.inputs.map((term) => ({ ...term, unit: unitOf(term.quantity), text: inWords(term.value, term.quantity) })),
  sources: one.sources,
  standing: one.standing,
  ...(one.method === undefined ? {} : { method: one.method }),
})
