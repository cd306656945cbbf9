import type { Worked } from '../../core/model/worked.ts'
import { type Words, wordsOf } from '../../words/index.ts'
import { inWords, unitOf } from './named.ts'

/** What an answer is called; its id where it has no name. */
export const answerLabel = (id: string): string =>
  Object.hasOwn(wordsOf('answers'), id) ? wordsOf('answers')[id as keyof Words['answers']].label : id

/** One number with its formula and all that went in. */
export const workedJson = (one: Worked) => ({
  id: one.id,
  label: answerLabel(one.id),
  value: one.value,
  unit: unitOf(one.quantity),
  text: inWords(one.value, one.quantity),
  formula: one.formula,
  inputs: one.inputs.map((term) => ({ ...term, unit: unitOf(term.quantity), text: inWords(term.value, term.quantity) })),
  sources: one.sources,
  standing: one.standing,
  ...(one.method === undefined ? {} : { method: one.method }),
})
