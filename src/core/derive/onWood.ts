import { heightAlong } from '../geometry/corner.ts'
import { alongTo, placeOn } from '../geometry/leaningPost.ts'
import type { Surface } from '../geometry/surface.ts'
import type { PierFrame } from './pierFrame.ts'

/** Height at which a line along the post, at radius r of its outline in the direction (cos, sin), passes a surface [m]. */
export function heightOnWood({ leaning }: PierFrame, surface: Surface, r: number, cos: number, sin: number): number {
  if (!leaning) return heightAlong(surface, r, cos, sin)
  const [u, v] = [r * cos, r * sin]
  return placeOn(leaning, u, alongTo(leaning, surface, u, v), v)[1]
}

/** Height of the post's foot on that line [m]. */
export const footOnWood = ({ leaning, foot }: PierFrame, r: number, cos: number, sin: number): number =>
  leaning ? placeOn(leaning, r * cos, 0, r * sin)[1] : foot

/** Length of wood for each length of height: over 1 for a post that leans. */
export const woodPerHeight = ({ leaning }: PierFrame): number => (leaning ? 1 / Math.cos(leaning.lean) : 1)
