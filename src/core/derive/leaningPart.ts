import { surfaceOf } from '../geometry/fillStack.ts'
import { heapFall } from '../geometry/heap.ts'
import { type LeaningPost, leaningSolid, postBetween } from '../geometry/leaningPost.ts'
import { level, type Surface } from '../geometry/surface.ts'
import type { Part } from './placedZones.ts'
import type { PierFrame } from './pierFrame.ts'

/** A post off plumb as a part of its own: what it takes off the base, each lift and a heap, and what of it stands in an open hole. */
export function leaningPart(frame: PierFrame, post: LeaningPost): Part {
  const { profile, lifts, spec, end } = frame
  const displaces: Record<string, number> = {}
  let from: Surface = level(profile.bottom)
  const take = (id: string, to: Surface) => {
    displaces[id] = postBetween(post, from, to)
    from = to
  }
  if (spec.hole.base) take('base', level(frame.fillBottom))
  for (const lift of lifts) take(lift.id, surfaceOf(profile, lift.to))
  const inHole = postBetween(post, from, frame.grade)
  if (spec.top.heaped > 0 && end.kind === 'top') take('heap', heapFall(end.surface, frame.innerRadius, spec.top.heaped))
  return { id: 'post', role: 'wood', label: 'post', solids: [leaningSolid(post)], inHole, displaces, leaning: post }
}
