import { type Corner, cornerPoint } from '../../../core/geometry/corner.ts'
import type { PlanAngles } from '../../../core/geometry/planAngles.ts'
import type { Zone } from '../../../core/model/zone.ts'
import { placedRings } from '../../../core/geometry/placed.ts'

/** Corners whose two sides turn less than this are no edge: sine of 12 degrees. */
const leastTurn = 0.2

type Point = readonly [number, number]

const turns = (before: Point, at: Point, after: Point): boolean => {
  const ax = at[0] - before[0]
  const ay = at[1] - before[1]
  const bx = after[0] - at[0]
  const by = after[1] - at[1]
  const scale = Math.hypot(ax, ay) * Math.hypot(bx, by)
  return scale > 0 && (Math.abs(ax * by - ay * bx) > leastTurn * scale || ax * bx + ay * by < 0)
}

/** Edges where a swept body turns sharply, over the angles its mesh has: rings, and uprights at the corners of rectangles. [n][2][3] metres. */
function sweptEdges(corners: readonly Corner[], angles: PlanAngles, out: number[]): void {
  const n = corners.length
  const count = angles.theta.length
  let last: Point[] = []
  for (let k = 0; k < count; k++) {
    const c = angles.cos[k] ?? 1
    const s = angles.sin[k] ?? 0
    const ring = corners.map((each) => cornerPoint(each, c, s))
    if (k > 0) {
      const pc = angles.cos[k - 1] ?? 1
      const ps = angles.sin[k - 1] ?? 0
      for (let i = 0; i < n; i++) {
        const p = ring[i]
        const q = last[i]
        const before = ring[(i + n - 1) % n]
        const after = ring[(i + 1) % n]
        if (!p || !q || !before || !after || p[0] < 1e-9 || !turns(before, p, after)) continue
        out.push(q[0] * pc, q[1], q[0] * ps, p[0] * c, p[1], p[0] * s)
      }
    }
    last = ring
  }
  corners.forEach((from, i) => {
    const to = corners[(i + 1) % n]
    if (!to || !('at' in from) || from.at.kind !== 'rectangle' || !('at' in to) || to.at.kind !== 'rectangle') return
    const corner = Math.atan2(from.at.hz, from.at.hx)
    for (const theta of [corner, Math.PI - corner, Math.PI + corner, -corner]) {
      if (!isKept(angles, theta)) continue
      const c = Math.cos(theta)
      const s = Math.sin(theta)
      const [ra, ya] = cornerPoint(from, c, s)
      const [rb, yb] = cornerPoint(to, c, s)
      out.push(ra * c, ya, ra * s, rb * c, yb, rb * s)
    }
  })
}

const isKept = (angles: PlanAngles, theta: number): boolean => {
  const start = angles.theta[0] ?? 0
  const kept = (angles.theta[angles.theta.length - 1] ?? 0) - start
  const turn = 2 * Math.PI
  const from = (((theta - start) % turn) + turn) % turn
  return from <= kept + 1e-9
}

const ringSides = 20

/** Hard edges of a zone as line segments, [n][2][3] metres. */
export function hardEdges(zone: Zone, angles: PlanAngles): Float32Array {
  const out: number[] = []
  if (zone.build === 'swept') sweptEdges(zone.corners, angles, out)
  else
    for (const solid of zone.solids) {
      const { from, to } = placedRings(solid, ringSides)
      for (const ring of [from, to])
        ring.forEach((p, i) => {
          const q = ring[(i + 1) % ring.length]
          if (q) out.push(...p, ...q)
        })
      if (solid.kind !== 'rod')
        from.forEach((p, i) => {
          const q = to[i]
          if (q) out.push(...p, ...q)
        })
    }
  return Float32Array.from(out)
}
