import { liftCorners, type StandingPost } from './fillStack.ts'
import type { HoleProfile } from './holeProfile.ts'
import { type LeaningPost, postBetween } from './leaningPost.ts'
import { sweptVolume } from './measure.ts'
import { level } from './surface.ts'

/** Volume [m3] of a level lift from `from` up to `y` [m], round the post that stands in it, plumb or leaning. */
export function laidVolume(
  profile: HoleProfile,
  from: number,
  y: number,
  { round, leaning }: Readonly<{ round: StandingPost | null; leaning: LeaningPost | null }>,
): number {
  if (y <= from) return 0
  const gross = sweptVolume(liftCorners(profile, from, { kind: 'level', y }, round)).value
  return leaning ? gross - postBetween(leaning, level(from), level(y)) : gross
}
