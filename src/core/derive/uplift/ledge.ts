import { wallRadius } from '../../geometry/holeProfile.ts'
import { type Metres, metres } from '../../units/quantity.ts'
import { carriesAsConcrete } from '../counting.ts'
import type { PierFrame } from '../pierFrame.ts'

/** A step in the pier that lifts the soil over it: where it is, how wide, and what passes up through that soil. */
export type Ledge = Readonly<{
  kind: 'bell' | 'collar'
  radius: Metres
  /** Top of the ledge below grade at its downhill edge [m]. */
  depth: Metres
  /** Radius of what goes on up: the shaft, or the round of the post's area [m]. */
  above: Metres
  where: readonly string[]
}>

/** The bell, or the top of a collar with soil over it; null for a straight shaft, which has nothing to lift soil with. */
export function ledgeOf(frame: PierFrame): Ledge | null {
  const { spec, profile, lifts, fillBottom } = frame
  const { slope } = spec.site
  const cast = lifts.filter((lift) => carriesAsConcrete(lift.role, spec))
  const first = cast[0]
  if (!first || lifts[0] !== first) return null
  if (spec.hole.bell && fillBottom < profile.bottom + spec.hole.bell.height) {
    const radius = wallRadius(profile, fillBottom)
    const top = profile.bottom + spec.hole.bell.height
    return {
      kind: 'bell',
      radius: metres(radius),
      depth: metres(-top - slope * radius),
      above: metres(profile.shaftRadius),
      where: [first.id],
    }
  }
  if (first.to.kind !== 'level' || !frame.standing) return null
  const radius = wallRadius(profile, first.to.y)
  const outline = frame.postOutline
  const area = outline.kind === 'rectangle' ? 4 * outline.hx * outline.hz : outline.kind === 'circle' ? Math.PI * outline.r ** 2 : 0
  return {
    kind: 'collar',
    radius: metres(radius),
    depth: metres(-first.to.y - slope * radius),
    above: metres(Math.sqrt(area / Math.PI)),
    where: [first.id, ...lifts.slice(1).map((lift) => lift.id)],
  }
}
