import { weakest } from '../../engineering/showing.ts'
import type { PierResult } from '../../model/result.ts'
import type { SoilMechanism } from '../../model/spec.ts'
import type { Check, Worked } from '../../model/worked.ts'
import { newtons } from '../../units/quantity.ts'
import { ratioOf } from '../check.ts'
import { blockOfPiersId } from './blockOfPiers.ts'
import type { ChainLink } from './chainLink.ts'

/** The soil mechanism in use, the links of the chain with it first, and the least of them; null when one is not counted. */
export type Chain = Readonly<{ soil: ChainLink | null; links: readonly ChainLink[]; governing: ChainLink | null }>

/**
 * Which link governs. Of the ways in which the ground may hold, the smallest that may be counted is used; the chain then holds as
 * much as its least link. With a bell the shaft can't slip while the bell holds: of slipping as its straight shaft would, and of lifting the
 * ground over the bell where its neck counts, the greater is used. A way that somebody chose is still capped by the pier's share of a block with its neighbours. When a needed link is not counted the chain has no capacity: it can't be verified.
 * @param chosen soil mechanism that somebody answers for instead of the smallest; without a value of its own it changes nothing
 */
export function chainOf(every: readonly ChainLink[], chosen: SoilMechanism | null = null): Chain {
  let first: ChainLink | null = null
  let soil: ChainLink | null = null
  let picked: ChainLink | null = null
  let block: ChainLink | null = null
  let heave: ChainLink | null = null
  let neck: ChainLink | null = null
  const rest: ChainLink[] = []
  for (const one of every) {
    if (one.id === bellNeckId) neck = one
    else if (chainGroups.has(one.group)) rest.push(one)
    if (one.group !== 'uplift-soil') continue
    first ??= one
    if (one.overBell) heave = lesser(heave, one)
    else soil = lesser(soil, one)
    if (one.id === chosen && one.allowable !== null) picked = one
    if (one.id === blockOfPiersId) block = one
  }
  const capped = (one: ChainLink | null) => (one && block ? lesser(one, block) : one)
  const lifted = neck === null || neck.allowable !== null ? capped(heave) : null
  const least = (lifted?.allowable?.value ?? 0) > (soil?.allowable?.value ?? 0) ? lifted : soil
  const used = capped(picked) ?? least ?? heave ?? first
  const needed = neck && used && pullPasses(neck.id, used.id) ? [...rest, neck] : rest
  const links = used ? [used, ...needed] : needed
  const isWhole = links.every((link) => link.allowable !== null)
  return { soil: used, links, governing: isWhole ? links.reduce<ChainLink | null>(lesser, null) : null }
}

const bellNeckId = 'bell-neck'
const lifting: ReadonlySet<string> = new Set(['cone-over-ledge', 'breakout-of-ledge'])
/** Does the pull pass this link? The neck of a bell only where the ground over the bell is what is counted. */
export const pullPasses = (id: string, soil: string): boolean => id !== bellNeckId || lifting.has(soil)

const chainGroups: ReadonlySet<Check['group']> = new Set(['uplift-post', 'uplift-connection', 'uplift-concrete'])

/** The smaller of two, the first of two alike; one that is not counted is never the smaller. */
const lesser = (best: ChainLink | null, one: ChainLink): ChainLink | null =>
  (one.allowable?.value ?? Number.POSITIVE_INFINITY) < (best?.allowable?.value ?? Number.POSITIVE_INFINITY) ? one : best

/**
 * The chain of a pier, with the weakest standing in it and the links that are not counted.
 * @param checks of those links
 * @param uplift at the top of the pier, when one is known
 */
export function governingUplift({ soil, links, governing }: Chain, checks: readonly Check[], uplift: Worked | null): PierResult['uplift'] {
  const inChain = new Set(links.map((link) => link.id))
  const allowable = governing?.allowable?.value ?? null
  return {
    soil: soil?.id ?? '',
    governing: governing?.id ?? null,
    allowable: allowable === null ? null : newtons(allowable),
    ratio: allowable !== null && allowable > 0 && uplift ? uplift.value / allowable : null,
    standing: weakest(...checks.filter((check) => inChain.has(check.id)).map((check) => check.standing)),
    uncounted: links.filter((link) => link.allowable === null).map((link) => link.id),
  }
}

/**
 * Holds every link of the chain against the uplift: those between post and ground, and the one soil mechanism in use. A link that
 * is asked for something else keeps that. No link has a ratio unless every one that is needed may be counted: a chain with a link that
 * nobody can verify has nothing to be held against.
 */
export function againstDemand(checks: readonly Check[], { soil, allowable }: PierResult['uplift'], uplift: Worked | null): Check[] {
  return checks.map((check) => {
    const isLink = (chainGroups.has(check.group) && pullPasses(check.id, soil)) || check.id === soil
    if (!isLink) return check
    const { ratio: _, ...bare } = check
    const demand = check.demand ?? uplift
    if (!demand) return bare
    const stated = check.allowable?.value ?? 0
    return { ...bare, demand, ...(allowable !== null && stated > 0 ? { ratio: ratioOf(demand.value, stated) } : {}) }
  })
}
