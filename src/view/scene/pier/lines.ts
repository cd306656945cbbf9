import { heightAlong, polygonAt } from '../../../core/geometry/corner.ts'
import { middleOf } from '../../../core/geometry/placed.ts'
import type { Surface } from '../../../core/geometry/surface.ts'
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

/** The part of cut outlines that runs along grade, [n][2][3] metres: the ground line where it is cut. */
export function groundLine(outlines: readonly Float32Array[], grade: Surface): Float32Array {
  const out: number[] = []
  const onGrade = (x: number, y: number, z: number): boolean => {
    const r = Math.hypot(x, z)
    return Math.abs(y - (r === 0 ? grade.a : heightAlong(grade, r, x / r, z / r))) < 1e-5
  }
  for (const outline of outlines)
    for (let i = 0; i < outline.length; i += 6) {
      const [ax, ay, az, bx, by, bz] = outline.subarray(i, i + 6) as unknown as [number, number, number, number, number, number]
      if (onGrade(ax, ay, az) && onGrade(bx, by, bz)) out.push(ax, ay, az, bx, by, bz)
    }
  return Float32Array.from(out)
}

/** Line segments, [n][2][3] metres, broken into dashes `dash` long with gaps `gap` [m]; each segment starts and ends on a dash. */
export function dashes(segments: Float32Array, dash: number, gap: number): Float32Array {
  const out: number[] = []
  for (let i = 0; i < segments.length; i += 6) {
    const [ax, ay, az, bx, by, bz] = segments.subarray(i, i + 6) as unknown as [number, number, number, number, number, number]
    const length = Math.hypot(bx - ax, by - ay, bz - az)
    if (!(length > 0)) continue
    const count = Math.max(1, Math.round((length + gap) / (dash + gap)))
    const period = (length + gap) / count
    for (let k = 0; k < count; k++) {
      const s = (k * period) / length
      const t = Math.min(1, (k * period + period - gap) / length)
      out.push(ax + (bx - ax) * s, ay + (by - ay) * s, az + (bz - az) * s, ax + (bx - ax) * t, ay + (by - ay) * t, az + (bz - az) * t)
    }
  }
  return Float32Array.from(out)
}
