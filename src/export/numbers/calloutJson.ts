import { factsOf } from '../../core/derive/report/report.ts'
import type { Fact, FactValue } from '../../core/model/fact.ts'
import { numberOf, wordIn } from '../../facts/firstWords.ts'
import { unitsFor } from '../../core/units/reader.ts'
import { nameOf, said, whyOf } from '../../facts/said.ts'
import { wordsOf } from '../../words/index.ts'
import { inWords, unitOf } from './named.ts'

/** A number with its unit and its words in both systems; a choice or a word as its key and what it says. */
const valueJson = (value: FactValue | null | undefined) => {
  if (value?.as === 'number') return { value: value.value, unit: unitOf(value.quantity), text: inWords(value.value, value.quantity) }
  if (value?.as === 'choice') return { value: value.choice, text: wordsOf('choices')[value.path]?.[value.choice] ?? value.choice }
  return value?.as === 'word' ? { value: value.word, text: wordIn(wordsOf('drawing').words, value.word) } : null
}

/** A figure of an item as the panel and the sheet write it: the drawing's, the pier's and their difference in one fraction. */
const figureJson = (fact: Fact, side: 'limit' | 'value' | 'difference') => {
  const value = valueJson(fact[side])
  return fact[side]?.as === 'number'
    ? { ...value, text: { us: said(fact, unitsFor('us'))[side], metric: said(fact, unitsFor('metric'))[side] } }
    : value
}

const item = (fact: Fact) => ({
  id: fact.id,
  label: nameOf(fact),
  drawn: figureJson(fact, 'limit'),
  set: figureJson(fact, 'value'),
  difference: figureJson(fact, 'difference'),
  tolerance: valueJson(fact.tolerance),
  verdict: fact.verdict,
  why: whyOf(fact),
  consequences: fact.figures.map(({ id, value }) => ({ id, label: wordIn(wordsOf('drawing').consequences, id), ...valueJson(value) })),
  verify: (fact.shownBy ?? []).map((key) => wordIn(wordsOf('drawing').verify, key)),
  where: fact.drawn,
  sources: fact.sources,
})

/** The check of a pier against its drawing as plain data; null without a drawing. Whoever reads it is told who decides. */
export function calloutJson(facts: readonly Fact[]): unknown {
  const [whole] = factsOf(facts, 'drawing')
  if (!whole) return null
  const checked = numberOf(whole.value) ?? 0
  const { checked: note, decides } = wordsOf('drawing')
  return {
    overall: whole.verdict,
    checked,
    note: `${note(checked)} ${decides}`,
    items: factsOf(facts, 'drawing-item').map(item),
  }
}
