import { inConcreteAbove } from '../core/derive/report/placedFacts.ts'
import { factsOf, sayTheSame } from '../core/derive/report/report.ts'
import { markOf } from '../core/derive/report/verdict.ts'
import type { Fact, FactGroup, FactValue, FactFigure, VerdictMark } from '../core/model/fact.ts'
import { togetherAsPrinted } from '../core/units/asPrinted.ts'
import type { SayNumber, Units } from '../core/units/reader.ts'
import { wordsOf } from '../words/index.ts'
import { answerWords, reasonWords } from './answerWords.ts'
import { headlineWords, numberOf, rowIn, wordIn, zoneWords } from './firstWords.ts'

export const contactWords = (id: string): string => wordIn(wordsOf('materials').contacts, id)

const sideName = ({ id }: Fact): string => wordIn(wordsOf('app').answers.sides, id)
/** Names of facts that are no numbers of an answer, by their group. */
const names: Partial<Readonly<Record<FactGroup, (fact: Fact) => string>>> = {
  quantity: ({ id, role }) => (role && zoneWords(id) === id ? wordsOf('materials').roles[role].label : zoneWords(id)),
  hole: ({ id }) => {
    const { spoilBank, spoilLoose, empty } = wordsOf('app').answers
    return rowIn({ 'spoil-bank': spoilBank, 'spoil-loose': spoilLoose, void: empty }, id) ?? headlineWords(id).label
  },
  depth: sideName,
  exposure: sideName,
  'exposure-area': () => wordsOf('app').answers.woodArea,
  'drawing-item': ({ id }) => wordIn(wordsOf('drawing').items, id),
}
export const nameOf = (fact: Fact): string => names[fact.group]?.(fact) ?? answerWords(fact.id).label

/** Choices are named in full in a list; in a narrow column the part before the bracket will do. */
const short = (word: string): string => word.replace(/ \(.*\)$/, '').split(',')[0] ?? word

export function valueWords(value: FactValue, { say, bare }: Pick<Units, 'say' | 'bare'>): string {
  if (value.as === 'number') return say(value.value, value.quantity)
  if (value.as === 'range') return `${bare(value.low, value.quantity)}–${say(value.high, value.quantity)}`
  if (value.as === 'choice') return short(wordsOf('choices')[value.path]?.[value.choice] ?? value.choice)
  return wordIn(wordsOf('drawing').words, value.word)
}

/** Shares below this are rounding. */
const nothing = 1e-9
/** A number with its sign, whatever its size: "−2 in", "+12%". */
const signed = (value: FactValue, say: SayNumber): string =>
  value.as === 'number' ? `${value.value < 0 ? '\u2212' : '+'}${say(Math.abs(value.value), value.quantity)}` : ''
/** The same; a dash where the two sides are no numbers or are alike. */
const changeWords = (value: FactValue | null | undefined, say: SayNumber): string =>
  value && Math.abs(numberOf(value) ?? 0) >= nothing ? signed(value, say) : '\u2013'

/** How a fact stands, in a word or a few. */
export function verdictWords({ group, verdict, reason }: Pick<Fact, 'group' | 'verdict' | 'reason'>): string {
  if (verdict === null) return ''
  const drawing = group === 'drawing' ? wordsOf('drawing').overall : group === 'drawing-item' ? wordsOf('drawing').verdicts : {}
  const condition = rowIn<Readonly<{ met: string; unmet: string }>>(wordsOf('app').conditions, reason ?? '')
  if (condition && verdict === 'condition met') return condition.met
  if (condition && verdict === 'condition not met') return condition.unmet
  const { verdicts } = wordsOf('app')
  return rowIn(drawing, verdict) ?? rowIn(verdicts, verdict) ?? wordIn(verdicts, markOf(verdict) ?? '')
}

/** Why a fact stands as it does, in a sentence or two; '' where nothing is said of it. */
export const whyOf = ({ group, reason }: Fact): string =>
  group === 'drawing-item' && reason !== null ? wordIn(wordsOf('drawing').why, reason) : reasonWords(reason)

/** A fact as it is read: in the language that is spoken, its numbers in the reader's units. */
export type SaidFact = Readonly<{
  name: string
  /** What it is, in one plain sentence; '' for most. */
  plain: string
  mark: VerdictMark | null
  word: string
  why: string
  value: string
  limit: string
  ratio: string
  difference: string
}>

/** A figure of the drawing, its limit and their difference are written in one fraction, and add up as they are printed. */
function together({ value, limit, difference = null }: Fact, units: Units): Readonly<{ units: Units; difference: FactValue | null }> {
  if (value?.as !== 'number' || limit?.as !== 'number' || difference?.as !== 'number') return { units, difference }
  const isDifference = value.quantity === limit.quantity && Math.abs(value.value - limit.value - difference.value) < nothing
  if (!isDifference) return { units, difference }
  const printed = togetherAsPrinted({ value: value.value, limit: limit.value, quantity: value.quantity }, units.say)
  const say: SayNumber = (one, quantity, options) => units.say(one, quantity, { ...printed.options, ...options })
  return { units: { ...units, say }, difference: { ...difference, value: printed.difference } }
}

export function said(fact: Fact, reader: Units): SaidFact {
  const isItem = fact.group === 'drawing-item'
  const { units, difference } = together(fact, reader)
  const none = isItem ? wordsOf('drawing').words.none : ''
  const of = (value: FactValue | null): string => (value === null ? none : valueWords(value, units))
  return {
    name: nameOf(fact),
    plain: fact.counted === null ? '' : answerWords(fact.id).plain,
    mark: markOf(fact.verdict),
    word: verdictWords(fact),
    why: whyOf(fact),
    value: of(fact.value),
    limit: of(fact.limit),
    ratio: fact.ratio === null ? '' : Math.max(0, fact.ratio).toFixed(2),
    difference: changeWords(difference, units.say),
  }
}

/** What a difference does, and by how much. */
export const effectWords = ({ id, value }: FactFigure, say: SayNumber): readonly [what: string, change: string] => [
  wordIn(wordsOf('drawing').consequences, id),
  signed(value, say),
]

/** Has somebody to be told why? */
export const isTold = ({ verdict }: Fact): boolean => verdict === 'falls short' || verdict === "can't be verified"

/** What touches a line of wood, or all of it, and how much of it. */
export const touchingWords = ({ figures }: Fact, units: Units): string =>
  figures.flatMap(({ id, value }) => (id === inConcreteAbove ? [] : [`${contactWords(id)} ${valueWords(value, units)}`])).join(', ')

/** How much more of a line of wood stands in concrete above grade; '' for none. */
export function aboveWords({ figures }: Fact, units: Units): string {
  const above = figures.find(({ id }) => id === inConcreteAbove)
  return above ? wordsOf('app').answers.aboveGrade(valueWords(above.value, units)) : ''
}

/** Depths by the place where they are measured; one for all where they are alike, as on level ground. */
export function depthPairs(facts: readonly Fact[], units: Units): readonly (readonly [place: string, depth: string])[] {
  const depths = factsOf(facts, 'depth')
  const pairs = depths.map((fact) => [nameOf(fact), fact.value ? valueWords(fact.value, units) : ''] as const)
  const [first] = pairs
  return first && sayTheSame(depths) ? [[wordsOf('app').answers.sides.all, first[1]]] : pairs
}
