import { castRoles } from '../../model/solid.ts'
import { type Metres, metres } from '../../units/quantity.ts'
import type { PierFrame } from '../pierFrame.ts'

/** Length of shaft cast against undisturbed ground that may be counted, as depths below the downhill edge [m]; null when none is left. */
export type CountedLength = Readonly<{ from: Metres; to: Metres; perimeter: Metres; where: readonly string[] }>

/**
 * What touches undisturbed ground over the shaft, less the depth of frost and of topsoil. Measured below the downhill edge. A bell counts as
 * the straight shaft would: it holds no less, since the ground over it has to move as well.
 */
export function countedLength({ spec, profile, lifts, fillBottom }: PierFrame): CountedLength | null {
  const drop = spec.site.slope * profile.shaftRadius
  let bottom = fillBottom
  let cast: { low: number; high: number; where: string[] } | null = null
  for (const lift of lifts) {
    const top = lift.to.kind === 'level' ? lift.to.y : -drop
    if (castRoles.has(lift.role))
      cast = cast ? { low: cast.low, high: top, where: [...cast.where, lift.id] } : { low: bottom, high: top, where: [lift.id] }
    bottom = top
  }
  if (!cast) return null
  const flareEnd = spec.hole.flare ? spec.hole.flare.depth - drop : 0
  const from = Math.max(spec.site.frostDepth, spec.site.topsoil, -cast.high - drop, flareEnd)
  const to = -cast.low - drop
  return to > from ? { from: metres(from), to: metres(to), perimeter: metres(Math.PI * spec.hole.diameter), where: cast.where } : null
}
