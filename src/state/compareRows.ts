import { claimsAbout } from '../core/derive/evidence.ts'
import { deriveCost } from '../core/derive/life/deriveCost.ts'
import { drawingOf } from '../core/derive/report/drawingFacts.ts'
import { factsOf } from '../core/derive/report/report.ts'
import { statusOf } from '../core/derive/report/status.ts'
import { chainGroups, type Fact, type FactFigure } from '../core/model/fact.ts'
import type { CostResult } from '../core/model/timeResult.ts'
import type { PierResult } from '../core/model/result.ts'
import type { Role } from '../core/model/solid.ts'
import { type Newtons, newtons, type QuantityKind } from '../core/units/quantity.ts'
import { factsAbout } from './derived.ts'
import { moistureOf } from './moistureDerived.ts'
import { lifeOf } from './timeDerived.ts'

export const compareRowIds = [
  'status',
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

/** The whole load path, or the main answer of this name. */
export function headlineOf(result: PierResult, id: string): Fact {
  const found = factsOf(factsAbout(result), 'uplift', 'headline').find((one) => one.id === id)
  if (!found) throw new Error(`headlineOf: none is called "${id}"`)
  return found
}

/** Links that a pull may have to pass, from the post down into the ground, without bounds. */
export const pullLinks = (result: PierResult): readonly Fact[] =>
  factsOf(factsAbout(result), ...chainGroups).filter(({ link }) => link?.place !== 'bound')

/** What touches the wood below grade and over what area, most first. */
export const touchesOf = (result: PierResult): readonly FactFigure[] =>
  factsOf(factsAbout(result), 'exposure-area')
    .flatMap(({ figures }) => figures)
    .sort((a, b) => areaOf(b) - areaOf(a))
const areaOf = ({ value }: FactFigure): number => (value.as === 'number' ? value.value : 0)

const loose: ReadonlySet<Role | undefined> = new Set(['dry-mix', 'flowable-fill', 'granular', 'backfill'])
/** Weight of what is placed round the post but may not be counted [N]. */
export function uncountedWeight({ quantities, checks, uplift }: PierResult): Newtons {
  const soil = checks.find((check) => check.id === uplift.soil)
  const own = soil?.counted === 'not counted' ? quantities.filter(({ role }) => loose.has(role)) : []
  return newtons(own.reduce((sum, { weight }) => sum + weight, 0))
}

/** What a pier costs over the years by the prices entered; null while none are. */
export const costOf = ({ spec }: PierResult): CostResult | null => deriveCost(spec, lifeOf(spec))

const always = (): boolean => true
/** Numbers that read alike are alike. */
const rounded = (value: number | null): string => (value === null ? '-' : value.toPrecision(4))

type Row = Omit<CompareRow, 'id'>
const said = (trace: Row['trace'], isShown: Row['isShown'] = always): Row => ({ better: null, number: null, trace, isShown })
const counted = (better: Row['better'], number: (result: PierResult) => RowNumber, isShown: Row['isShown'] = always): Row => ({
  ...said((result) => rounded(number(result).value), isShown),
  better,
  number,
})
const headline = (better: Row['better'], id: string): Row =>
  counted(better, (result) => {
    const { value } = headlineOf(result, id)
    return value?.as === 'number' ? value : { value: null, quantity: 'force' }
  })
const drawn = (result: PierResult): readonly Fact[] => factsOf(factsAbout(result), 'drawing-item')

const method = ({ spec }: PierResult): string =>
  `${spec.fill.kind} ${spec.support.kind === 'bracket' ? spec.support.bracket.kind : spec.support.kind}`

const rows: Readonly<Record<CompareRowId, Row>> = {
  status: said((result) =>
    Object.entries(statusOf(factsAbout(result)))
      .map(([stand, checks]) => `${stand} ${checks.map(({ id }) => id)}`)
      .join(),
  ),
  'holds-down': headline('more', 'uplift'),
  'load-used': counted(
    'less',
    (result) => ({ value: headlineOf(result, 'uplift').ratio, quantity: 'ratio' }),
    (results) => results.some(({ demand }) => demand.uplift !== null),
  ),
  links: said((result) =>
    pullLinks(result)
      .map(({ id, counted: how, reason }) => `${id} ${how} ${reason}`)
      .join(),
  ),
  drawing: said(
    (result) =>
      drawn(result)
        .map(({ id, verdict }) => `${id} ${verdict}`)
        .join(),
    (results) => results.some((result) => drawingOf(factsAbout(result)) !== undefined),
  ),
  hole: headline(null, 'hole-volume'),
  mix: headline(null, 'mix-volume'),
  weight: headline(null, 'pier-weight'),
  wood: headline('less', 'wood-below-grade'),
  touching: said((result) =>
    touchesOf(result)
      .map((touch) => `${touch.id} ${rounded(areaOf(touch))}`)
      .join(),
  ),
  wet: said(({ spec }) =>
    moistureOf(spec)
      .shares.map(({ wetness, share }) => `${wetness} ${rounded(share)}`)
      .join(),
  ),
  life: said(({ spec }) => {
    const last = lifeOf(spec).sound?.at(-1)
    return last ? `${last.year} ${rounded(last.share.low)} ${rounded(last.share.high)}` : '-'
  }),
  inspect: said(method),
  replace: said(method),
  cost: said((result) => {
    const cost = costOf(result)
    return cost?.present ? `${rounded(cost.present.low)} ${rounded(cost.present.high)}` : (cost?.lacks.join() ?? 'costs')
  }),
  sides: said(method),
  evidence: said((result) =>
    claimsAbout(result)
      .map(({ id }) => id)
      .join(),
  ),
  ask: said(method),
}
const all: readonly CompareRow[] = compareRowIds.map((id) => ({ id, ...rows[id] }))

/** The rows that these piers have, in their fixed order: how its checks stand, how it holds, what the drawing asks, what goes in, wood, then what people ask. */
export const rowsFor = (results: readonly PierResult[]): readonly CompareRow[] => all.filter((row) => row.isShown(results))

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
