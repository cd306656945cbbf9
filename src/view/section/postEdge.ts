import { shiftAt } from '../../core/geometry/leaningPost.ts'
import { postOf } from '../../core/geometry/postOf.ts'
import { radiusAlong } from '../../core/geometry/radial.ts'
import type { PostSide } from '../../core/model/moistureResult.ts'
import type { PierResult } from '../../core/model/result.ts'
import type { AnnotationInput } from './annotate.ts'

/** The side of the post that a face shows: that which lies nearest. */
export function sideOf({ spec }: PierResult, theta: number): PostSide {
  const along = Math.cos(theta - spec.site.downhill)
  return along > 0.35 ? 'downhill' : along < -0.35 ? 'uphill' : 'axis'
}

/** From the middle of the post to its face at a plan angle [m]; null without a post. */
export function postRadius({ zones }: PierResult, theta: number): number | null {
  const post = postOf(zones)
  return post && radiusAlong(post.outline, Math.cos(theta), Math.sin(theta))
}

/** Sees places told from the middle of the post: where it leans, they have come over with it. */
export function alongPost<T extends AnnotationInput>(input: T): T {
  const leaning = postOf(input.result.zones)?.leaning
  if (!leaning) return input
  const { sight } = input
  const over = (theta: number, y: number) => shiftAt(leaning, y) * Math.cos(theta - leaning.toward)
  return { ...input, sight: { ...sight, point: (theta, r, y) => sight.point(theta, r + over(theta, y), y) } }
}
