import { type HoleProfile, wallRadius } from '../geometry/holeProfile.ts'
import type { Depths } from '../model/result.ts'
import { metres } from '../units/quantity.ts'
import type { PierFrame } from './pierFrame.ts'

/** Signed height of what bears on the ground [m]: underside of a concrete base, else of what the fill begins with on top of gravel. */
export const bearingLevel = ({ spec, fillBottom, profile }: PierFrame): number =>
  spec.hole.base?.material === 'concrete' ? profile.bottom : fillBottom

/** Zone that stands on the ground: a concrete base, else what the fill begins with. */
export const bearingBody = ({ spec, lifts }: PierFrame): readonly string[] =>
  spec.hole.base?.material === 'concrete' ? ['base'] : lifts.slice(0, 1).map((lift) => lift.id)

export const bearingRadius = (frame: PierFrame): number => radiusAt(frame.profile, bearingLevel(frame))

export const radiusAt = (profile: HoleProfile, y: number): number => wallRadius(profile, y)

/**
 * Depth of the bearing surface below grade [m] on the axis and under the two edges of what bears. Frost, least depth, bearing
 * and side checks use the downhill edge; volumes use the axis; water running at the crown uses the uphill edge.
 */
export function depths(frame: PierFrame): Depths {
  const below = -bearingLevel(frame)
  const edge = bearingRadius(frame) * frame.spec.site.slope
  return {
    bearingAtAxis: metres(below),
    bearingAtDownhillEdge: metres(below - edge),
    bearingAtUphillEdge: metres(below + edge),
  }
}
