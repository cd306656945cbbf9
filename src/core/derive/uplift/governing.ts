import { weakest } from '../../engineering/showing.ts'
import type { PierResult } from '../../model/result.ts'
import type { SoilMechanism } from '../../model/spec.ts'
import type { Check, Worked } from '../../model/worked.ts'
import { newtons } from '../../units/quantity.ts'
import { blockOfPiersId } from './blockOfPiers.ts'
import { type Hold, holdOf } from './hold.ts'

/** The soil mechanism in use, the links of the chain with it first, and the least of them; null when one is not counted. */
export type Chain = Readonly<{ soil: Hold | null; links: readonly Hold[]; governing: Hold | null }>

/**
 * Which link governs. Of the ways in which the ground may hold, the smallest that may be counted is used; the chain then holds as
 * much as its least link. A way that somebody chose is still capped by the pier's share of a block with its neighbours. When a needed link is not counted the chain has no capacity: it can't be verified.
 * @param chosen soil mechanism that somebody answers for instead of the smallest; without a value of its own it changes nothing
 */
export function chainOf(holds: readonly Hold[], chosen: SoilMechanism | null = null): Chain {
  let first: Hold | null = null
  let soil: Hold | null = null
  let picked: Hold | null = null
  let block: Hold | null = null
  const rest: Hold[] = []
  for (const one of holds) {
    if (chainGroups.has(one.group)) rest.push(one)
    if (one.group !== 'uplift-soil' || one.counted === 'upper bound') continue
    first ??= one
    soil = lesser(soil, one)
    if (one.id === chosen && one.allowable !== null) picked = one
    if (one.id === blockOfPiersId) block = one
  }
  const used = (picked && block ? lesser(picked, block) : picked) ?? soil ?? first
  const links = used ? [used, ...rest] : rest
  const isWhole = links.every((link) => link.allowable !== null)
  return { soil: used, links, governing: isWhole ? links.reduce<Hold | null>(lesser, null) : null }
}

const chainGroups: ReadonlySet<Check['group']> = new Set(['uplift-post', 'uplift-connection', 'uplift-concrete'])

/** The smaller of two, the first of two alike; one that is not counted is never the smaller. */
const lesser = (best: Hold | null, one: Hold): Hold | null =>
  (one.allowable ?? Number.POSITIVE_INFINITY) < (best?.allowable ?? Number.POSITIVE_INFINITY) ? one : best

/**
 * The chain of a result's checks, with the weakest standing in it and the links that are not counted.
 * @param uplift at the top of the pier, when one is known
 */
export function governingUplift(checks: readonly Check[], chosen: SoilMechanism | null, uplift: Worked | null): PierResult['uplift'] {
  const { soil, links, governing } = chainOf(checks.map(holdOf), chosen)
  const inChain = new Set(links.map((link) => link.id))
  const allowable = governing?.allowable ?? null
  return {
    soil: soil?.id ?? '',
    governing: governing?.id ?? null,
    allowable: allowable === null ? null : newtons(allowable),
    ratio: allowable !== null && allowable > 0 && uplift ? uplift.value / allowable : null,
    standing: weakest(...checks.filter((check) => inChain.has(check.id)).map((check) => check.standing)),
    uncounted: links.filter((link) => link.allowable === null).map((link) => link.id),
  }
}
