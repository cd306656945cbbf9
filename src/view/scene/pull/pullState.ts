import { lettingGo, type LettingGo, type LettingGoHow } from '../../../core/derive/lettingGo.ts'
import type { PierResult } from '../../../core/model/result.ts'

/**
 * What a pull does in the picture. `unverified`: the chain has no capacity, so nothing moves. `holding`: `share` of the allowable, 0..1.
 * `letting-go`: the governing link is full, and `way` says which zones go.
 */
export type PullState =
  | Readonly<{ kind: 'none' | 'unverified' }>
  | Readonly<{ kind: 'holding'; share: number }>
  | Readonly<{ kind: 'letting-go'; way: LettingGo }>

/** `pull` in newtons; null while nobody pulls. */
export function pullState(result: PierResult, pull: number | null): PullState {
  if (pull === null) return { kind: 'none' }
  const { allowable, governing } = result.uplift
  if (allowable === null || governing === null || !(allowable > 0)) return { kind: 'unverified' }
  const way = pull >= allowable ? lettingGo(result, governing) : null
  return way ? { kind: 'letting-go', way } : { kind: 'holding', share: Math.min(1, pull / allowable) }
}

/** The zone that stays and bends, for the ways in which steel bends. */
const bending: Readonly<Partial<Record<LettingGoHow, string>>> = { 'bar-bends': 'bars', 'bolts-bend': 'bolts' }
export const bentZone = (how: LettingGoHow): string | null => bending[how] ?? null

/** The whole pier, or a good part of it, is shown to rise farther than a post in its pier. Shares of the hole's depth. */
const pierWays: ReadonlySet<LettingGoHow> = new Set([
  'pier-parts',
  'pier-slides',
  'pier-heaves-soil',
  'pier-lifts-cone',
  'base-breaks-out',
  'concrete-cone',
])

/** How far the picture lifts what goes [m]: enough to be seen, and no computed length. */
export const shownRise = (how: LettingGoHow, depth: number): number => (pierWays.has(how) ? 0.13 : 0.07) * depth

/** How long what lets go takes to rise in the picture [ms]. */
export const riseTime = 900

/** The share 0..1 by which what has let go has risen after so long [ms]. */
export function risenAfter(elapsed: number): number {
  const t = Math.min(1, Math.max(0, elapsed / riseTime))
  return t * t * (3 - 2 * t)
}
