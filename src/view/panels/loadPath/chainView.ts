import type { PierResult } from '../../../core/model/result.ts'
import type { Check } from '../../../core/model/worked.ts'

/** One link as the chart shows it. */
export type ChartLink = Readonly<{
  check: Check
  /** A link that the pull must pass; a way to count the ground that is not in use; or an upper bound, shown for scale. */
  place: 'needed' | 'spare' | 'bound'
  governs: boolean
  /** What it holds [N]; null where nothing may be counted. Of a bound: no more than this. */
  holds: number | null
  /** The load that it must hold is more than it holds. */
  isShort: boolean
}>

export type ChartGroup = Readonly<{ group: Check['group']; links: readonly ChartLink[] }>

/** The load path from the post down, with what pulls on it. */
export type ChainView = Readonly<{
  groups: readonly ChartGroup[]
  /** Uplift that is asked for [N]; null when none is known. Not more than nothing where dead load wins. */
  demand: number | null
  isEstimate: boolean
  /** Of the whole chain [N]; null when a needed link is not counted. */
  allowable: number | null
  governing: Check | null
  uncounted: readonly Check[]
  /** Uplift over the allowable; null without either. */
  ratio: number | null
}>

/** In the order in which a pull travels: from the post, through the connection and the concrete, into the ground. */
const order: readonly Check['group'][] = ['uplift-post', 'uplift-connection', 'uplift-concrete', 'uplift-soil']

const placeOf = (check: Check, soil: string): ChartLink['place'] => {
  if (check.counted === 'upper bound') return 'bound'
  return check.group === 'uplift-soil' && check.id !== soil ? 'spare' : 'needed'
}

const holdsOf = (check: Check): number | null => {
  if (check.counted === 'upper bound') return check.worked.findLast((one) => one.quantity === 'force')?.value ?? null
  return check.counted === 'not counted' ? null : (check.allowable?.value ?? null)
}

const rank = { needed: 0, spare: 1, bound: 2 } as const

/** Needed links first in each group, then what is not used, least first. */
const byPlace = (a: ChartLink, b: ChartLink): number =>
  rank[a.place] - rank[b.place] || (a.place === 'spare' ? (a.holds ?? 0) - (b.holds ?? 0) : 0)

/** What the chart draws of a result. No number is made here: all are the result's own. */
export function chainView({ checks, uplift, demand }: PierResult): ChainView {
  const asked = demand.uplift?.value ?? null
  const link = (check: Check): ChartLink => {
    const place = placeOf(check, uplift.soil)
    const holds = holdsOf(check)
    const isShort = place === 'needed' && uplift.allowable !== null && asked !== null && holds !== null && asked > holds
    return { check, place, governs: check.id === uplift.governing, holds, isShort }
  }
  const groups = order
    .map((group) => ({
      group,
      links: checks
        .filter((check) => check.group === group)
        .map(link)
        .sort(byPlace),
    }))
    .filter(({ links }) => links.length > 0)
  return {
    groups,
    demand: asked,
    isEstimate: demand.isEstimate,
    allowable: uplift.allowable,
    governing: checks.find((check) => check.id === uplift.governing) ?? null,
    uncounted: checks.filter((check) => uplift.uncounted.includes(check.id)),
    ratio: uplift.ratio,
  }
}
