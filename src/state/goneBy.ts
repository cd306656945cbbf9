import type { PierSpec } from '../core/model/spec.ts'
import { lifeOf } from './timeDerived.ts'

/** Shares of such posts that are no longer sound: the least and the most that the range of life allows. */
export type Gone = { least: number; most: number }

/**
 * Writes into `into` what the range of life allows at a place of the years, between whole ones too. Called with each frame: it makes
 * nothing. Past the last year that the rows speak of it stands still. False, with nothing gone, where no range can be given.
 */
export function goneBy(spec: PierSpec, year: number, into: Gone): boolean {
  const { sound } = lifeOf(spec)
  into.least = 0
  into.most = 0
  if (sound === null || sound.length === 0) return false
  const before = Math.min(sound.length - 1, Math.max(0, Math.floor(year)))
  const from = sound[before]
  const to = sound[Math.min(sound.length - 1, before + 1)]
  if (!from || !to) return false
  const way = Math.min(1, Math.max(0, year - before))
  into.least = 1 - (from.share.high + way * (to.share.high - from.share.high))
  into.most = 1 - (from.share.low + way * (to.share.low - from.share.low))
  return true
}

/** So many posts are counted out: the same number for every pier and every year. */
export const tallied = 20

/** Of `tallied` such posts: still sound whichever end of the range holds, no longer sound whichever holds, and those that it leaves open. `until`: last year that the rows speak of. */
export type TallyCounts = Readonly<{ sound: number; open: number; gone: number; until: number }>

/** Rounded so that no more is claimed than the range says; null where no range can be given. */
export function tallyBy(spec: PierSpec, year: number): TallyCounts | null {
  const found: Gone = { least: 0, most: 0 }
  if (!goneBy(spec, year, found)) return null
  const hair = 1e-9
  const sound = Math.floor(tallied * (1 - found.most) + hair)
  const gone = Math.floor(tallied * found.least + hair)
  return { sound, open: tallied - sound - gone, gone, until: (lifeOf(spec).sound?.length ?? 1) - 1 }
}
