import { radiusAlong } from '../../core/geometry/radial.ts'
import type { PostSide } from '../../core/model/moistureResult.ts'
import type { PierResult } from '../../core/model/result.ts'

/** The side of the post that a face shows: that which lies nearest. */
export function sideOf({ spec }: PierResult, theta: number): PostSide {
  const along = Math.cos(theta - spec.site.downhill)
  return along > 0.35 ? 'downhill' : along < -0.35 ? 'uphill' : 'axis'
}

/** From the axis to the post's face at a plan angle [m]; null without a post that is turned about the axis. */
export function postRadius({ zones }: PierResult, theta: number): number | null {
  for (const zone of zones) {
    if (zone.role !== 'wood' || zone.build !== 'swept') continue
    const r = Math.max(0, ...zone.corners.map((one) => ('at' in one ? radiusAlong(one.at, Math.cos(theta), Math.sin(theta)) : 0)))
    if (r > 0) return r
  }
  return null
}
