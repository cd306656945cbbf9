import type { Fact } from '../core/model/fact.ts'
import type { Order } from '../core/model/result.ts'
import type { Standing } from '../core/model/worked.ts'
import type { Units } from '../core/units/reader.ts'
import { sayTheSame } from '../core/derive/report/report.ts'
import { wordsOf } from '../words/index.ts'

/** The row of a table by a key that may not be in it. */
export const rowIn = <T>(table: Readonly<Record<string, T>>, id: string): T | undefined =>
  Object.hasOwn(table, id) ? table[id] : undefined

/** Words by a key; the key itself where there are none. */
export const wordIn = (table: Readonly<Record<string, string>>, key: string): string => rowIn(table, key) ?? key

/** Name and plain sentence of an answer that stands on the opening page; `answerWords` knows all. */
export const headlineWords = (id: string): Readonly<{ label: string; plain: string }> =>
  rowIn(wordsOf('headlines'), id) ?? { label: id, plain: '' }
export const zoneWords = (label: string): string => wordIn(wordsOf('zones'), label)
export const standingWords = (standing: Standing) => wordsOf('standings')[standing]

/** One way to buy it, for one pier or for the job. */
export const orderWords = (order: Order, { system, say }: Units, scope: 'each' | 'job', length: 'long' | 'short' = 'short'): string =>
  order.as === 'bags'
    ? wordsOf('app').answers[length === 'long' ? 'bags' : 'bagsShort'](say(order[scope], 'count'), order.bagSize)
    : say(order[scope], 'volume', { unit: system === 'us' ? 'yd3' : 'm3' }).replace(' ', '\u00a0')

/** Ways to buy it, any one of which will do. */
export const waysWords = ({ orders = [] }: Pick<Fact, 'orders'>, units: Units, scope: 'each' | 'job' = 'each'): string =>
  orders.map((order) => orderWords(order, units, scope)).join(` ${wordsOf('app').answers.or} `)

/** The same as a sentence, which tells what is ordered from what is placed. */
export const toOrderWords = (fact: Pick<Fact, 'orders'>, units: Units): string => {
  const { toOrder, toOrderWith } = wordsOf('app').answers
  const ways = waysWords(fact, units)
  const extra = Math.max(0, ...(fact.orders ?? []).map((order) => order.extra))
  return ways === '' ? '' : extra > 0 ? toOrderWith(units.say(extra, 'ratio'), ways) : toOrder(ways)
}

/** What of all that is poured lies in the hole and what stands above grade; '' where it all lies in the hole. */
export const mixPartsWords = ({ figures }: Pick<Fact, 'figures'>, units: Units): string =>
  figures.length < 2
    ? ''
    : figures
        .map(({ id, value }) => `${units.say(numberOf(value) ?? 0, 'volume')} ${wordIn(wordsOf('app').answers.mixParts, id)}`)
        .join(' + ')

/** The number of a value; null for a word, a range or nothing. */
export const numberOf = (value: Fact['value']): number | null => (value?.as === 'number' ? value.value : null)

/** On which side most wood is below grade; that it is the same on all of them; or that none is. */
export function mostWoodWords(sides: readonly Fact[]): string {
  const words = wordsOf('app').answers
  const lengths = sides.map(({ value }) => numberOf(value) ?? 0)
  const most = Math.max(...lengths, 0)
  if (most === 0) return words.allAbove
  if (sayTheSame(sides.map((side) => ({ ...side, figures: [] })))) return words.sides.all
  return wordIn(words.sides, sides[lengths.indexOf(most)]?.id ?? '')
}

/** What is said of several, each text once, with all that it is said of, in the order in which they come. */
export function grouped<T>(list: readonly T[], by: (one: T) => string): readonly (readonly [key: string, list: readonly T[]])[] {
  const groups = new Map<string, T[]>()
  for (const one of list) groups.set(by(one), [...(groups.get(by(one)) ?? []), one])
  return [...groups]
}
