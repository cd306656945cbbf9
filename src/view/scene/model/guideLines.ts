import { middleOf } from '../../../core/geometry/placed.ts'
import { polygonAt } from '../../../core/geometry/corner.ts'
import type { Cut } from '../../../core/model/solid.ts'
import type { Zone } from '../../../core/model/zone.ts'
import type { Offset } from './lifted.ts'

/**
 * Upright lines from the edge of each lifted body's foot, where it stood, to where it is now, [n][2][3] metres: on the two cut
 * faces and behind; for a bar from its middle outward.
 */
export function guideLines(zones: readonly Zone[], offsets: ReadonlyMap<string, Offset>, lift: number, cut: Cut): Float32Array {
  const out: number[] = []
  const angles = [cut.facing + cut.open / 2, cut.facing - cut.open / 2]
  for (const zone of zones) {
    const [dx, dy, dz] = offsets.get(zone.id) ?? [0, 0, 0]
    if (dx === 0 && dy === 0 && dz === 0) continue
    if (zone.build === 'placed') {
      for (const solid of zone.solids) {
        const [x, y, z] = middleOf(solid)
        if (dx !== 0 || dz !== 0) out.push(x, y + dy * lift, z, x + dx * lift, y + dy * lift, z + dz * lift)
      }
      continue
    }
    for (const theta of angles) {
      const foot = polygonAt(zone.corners, theta).reduce((best, p) =>
        p[0] > best[0] + 1e-6 || (p[0] > best[0] - 1e-6 && p[1] < best[1]) ? p : best,
      )
      const [x, z] = [foot[0] * Math.cos(theta), foot[0] * Math.sin(theta)]
      out.push(x, foot[1], z, x, foot[1] + dy * lift, z)
    }
  }
  return Float32Array.from(out)
}
