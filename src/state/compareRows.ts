import { claimsAbout } from '../core/derive/evidence.ts'
import { deriveCost } from '../core/derive/life/deriveCost.ts'
import type { Contact } from '../core/model/kind.ts'
import type { CostResult } from '../core/model/timeResult.ts'
import type { PierResult, QuantityLine } from '../core/model/result.ts'
import type { Check } from '../core/model/worked.ts'
import type { QuantityKind } from '../core/units/quantity.ts'
import { moistureOf } from './moistureDerived.ts'
import { lifeOf } from './timeDerived.ts'

export const compareRowIds = [
  'holds-down',
  'load-used',
  'links',
  'drawing',
  'hole',
  'mix',
  'weight',
  'wood',
  'touching',
  'wet',
  'life',
  'inspect',
  'replace',
  'cost',
  'sides',
  'evidence',
  'ask',
] as const
/** A row of the comparison. A key into the text table. */
export type CompareRowId = (typeof compareRowIds)[number]

/** A number of a row: null where there is none that may be stated, which is neither nothing nor a failure. */
export type RowNumber = Readonly<{ value: number | null; quantity: QuantityKind }>

/**
 * One row, the same for every pier. `better` says which end of the scale a reader wants, null where neither is: then no best and no
 * worst is marked. `trace` gives equal text for piers of which the row says the same.
 */
export type CompareRow = Readonly<{
  id: CompareRowId
  better: 'more' | 'less' | null
  number: ((result: PierResult) => RowNumber) | null
  trace(result: PierResult): string
  isShown(results: readonly PierResult[]): boolean
}>

/** Links from the post down into the ground, as a pull travels. */
export const chainGroups: readonly Check['group'][] = ['uplift-post', 'uplift-connection', 'uplift-concrete', 'uplift-soil']
export const chainOfResult = ({ checks }: PierResult): readonly Check[] =>
  chainGroups.flatMap((group) => checks.filter((check) => check.group === group && check.counted !== 'upper bound'))

/** What touches the wood below grade and over what area [m2], most first. */
export const contactsOf = ({ exposure }: PierResult): readonly (readonly [Contact, number])[] =>
  (Object.entries(exposure.area) as [Contact, number][]).filter(([, area]) => area > 1e-9).sort((a, b) => b[1] - a[1])

/** What is placed round the post and weighs something, but may not be counted. */
export const uncountedMass = ({ quantities, checks, uplift }: PierResult): readonly QuantityLine[] => {
  const soil = checks.find((check) => check.id === uplift.soil)
  if (soil?.counted !== 'not counted') return []
  return quantities.filter(({ role }) => role === 'dry-mix' || role === 'flowable-fill' || role === 'granular' || role === 'backfill')
}

/** What a pier costs over the years by the prices entered; null while none are. */
export const costOf = ({ spec }: PierResult): CostResult | null => deriveCost(spec, lifeOf(spec))

const always = (): boolean => true
/** Numbers that read alike are alike. */
const rounded = (value: number | null): string => (value === null ? '-' : value.toPrecision(4))
const headline = (id: string) => (result: PierResult) => {
  const worked = result.headlines.find((one) => one.id === id)
  if (!worked) throw new Error(`headline: none is called "${id}"`)
  return { value: worked.value, quantity: worked.quantity }
}

const counted = (id: CompareRowId, better: CompareRow['better'], number: (result: PierResult) => RowNumber): CompareRow => ({
  id,
  better,
  number,
  trace: (result) => rounded(number(result).value),
  isShown: always,
})
const said = (id: CompareRowId, trace: (result: PierResult) => string, isShown: CompareRow['isShown'] = always): CompareRow => ({
  id,
  better: null,
  number: null,
  trace,
  isShown,
})

const method = ({ spec }: PierResult): string =>
  `${spec.fill.kind} ${spec.support.kind === 'bracket' ? spec.support.bracket.kind : spec.support.kind}`

const rows: Readonly<Record<CompareRowId, CompareRow>> = {
  'holds-down': counted('holds-down', 'more', ({ uplift }) => ({ value: uplift.allowable, quantity: 'force' })),
  'load-used': {
    ...counted('load-used', 'less', ({ uplift }) => ({ value: uplift.ratio, quantity: 'ratio' })),
    isShown: (results) => results.some(({ demand }) => demand.uplift !== null),
  },
  links: said('links', (result) =>
    chainOfResult(result)
      .map(({ id, counted: how, why }) => `${id} ${how} ${why}`)
      .join(),
  ),
  drawing: said(
    'drawing',
    ({ callout }) => (callout === null ? '' : callout.items.map(({ id, verdict }) => `${id} ${verdict}`).join()),
    (results) => results.some(({ callout }) => callout !== null && callout.checked > 0),
  ),
  hole: counted('hole', null, headline('hole-volume')),
  mix: counted('mix', null, headline('mix-volume')),
  weight: counted('weight', null, headline('pier-weight')),
  wood: counted('wood', 'less', headline('wood-below-grade')),
  touching: said('touching', (result) =>
    contactsOf(result)
      .map(([contact, area]) => `${contact} ${rounded(area)}`)
      .join(),
  ),
  wet: said('wet', ({ spec }) =>
    moistureOf(spec)
      .shares.map(({ wetness, share }) => `${wetness} ${rounded(share)}`)
      .join(),
  ),
  life: said('life', ({ spec }) => {
    const { estimated } = lifeOf(spec)
    return estimated ? `${rounded(estimated.low)} ${rounded(estimated.high)}` : '-'
  }),
  inspect: said('inspect', method),
  replace: said('replace', method),
  cost: said('cost', (result) => {
    const cost = costOf(result)
    return cost?.present ? `${rounded(cost.present.low)} ${rounded(cost.present.high)}` : (cost?.lacks.join() ?? 'costs')
  }),
  sides: said('sides', method),
  evidence: said('evidence', (result) =>
    claimsAbout(result)
      .map(({ id }) => id)
      .join(),
  ),
  ask: said('ask', method),
}

/** The rows that these piers have, in their fixed order: how it holds, what the drawing asks, what goes in, wood, then what people ask. */
export const rowsFor = (results: readonly PierResult[]): readonly CompareRow[] =>
  compareRowIds.map((id) => rows[id]).filter((row) => row.isShown(results))

/** How many different things a row says of these piers. */
export const voices = (row: CompareRow, results: readonly PierResult[]): number => new Set(results.map((result) => row.trace(result))).size

/** Rows that tell the piers apart most come first; those alike keep their order. */
export const differingFirst = (ordered: readonly CompareRow[], results: readonly PierResult[]): readonly CompareRow[] =>
  [...ordered].sort((a, b) => voices(b, results) - voices(a, results))

/** Places of the best and the worst; several where they are alike. */
export type Extremes = Readonly<{ best: readonly number[]; worst: readonly number[] }>
const none: Extremes = { best: [], worst: [] }

/**
 * Best and worst of a row. Only where a reader wants one end, where every pier has a number that may be stated, and where the numbers
 * do not all read alike: a pier that can't be verified is never worst, and leaves no best.
 */
export function extremesOf(row: CompareRow, results: readonly (PierResult | null)[]): Extremes {
  const { better, number } = row
  if (better === null || number === null || results.length < 2) return none
  const values: number[] = []
  for (const result of results) {
    const value = result === null ? null : number(result).value
    if (value === null || !Number.isFinite(value)) return none
    values.push(value)
  }
  const [low, high] = [Math.min(...values), Math.max(...values)]
  if (rounded(low) === rounded(high)) return none
  const at = (end: number) => values.flatMap((value, i) => (rounded(value) === rounded(end) ? [i] : []))
  return better === 'more' ? { best: at(high), worst: at(low) } : { best: at(low), worst: at(high) }
}
