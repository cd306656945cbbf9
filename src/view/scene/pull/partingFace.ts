import { polygonAt } from '../../../core/geometry/corner.ts'
import type { PlanAngles } from '../../../core/geometry/planAngles.ts'
import type { Mesh } from '../../../core/model/solid.ts'
import type { SweptZone } from '../../../core/model/zone.ts'

/** A straight run in the (r, y) half-plane: from (r, y) [m] along (dr, dy), `length` times that; Infinity for on and on. */
export type Run = Readonly<{ r: number; y: number; dr: number; dy: number; length: number }>

/** Shares along the run at which it lies inside a polygon: from, to, from, to … */
function inside(polygon: readonly (readonly [number, number])[], { r, y, dr, dy, length }: Run): number[] {
  const crossings: number[] = []
  polygon.forEach((a, i) => {
    const b = polygon[(i + 1) % polygon.length]
    if (!b) return
    const fa = (a[0] - r) * dy - (a[1] - y) * dr
    const fb = (b[0] - r) * dy - (b[1] - y) * dr
    if (fa >= 0 === fb >= 0) return
    const t = fa / (fa - fb)
    const [mr, my] = [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t]
    crossings.push(((mr - r) * dr + (my - y) * dy) / (dr * dr + dy * dy))
  })
  crossings.sort((p, q) => p - q)
  const out: number[] = []
  for (let i = 0; i + 1 < crossings.length; i += 2) {
    const from = Math.max(0, crossings[i] ?? 0)
    const to = Math.min(length, crossings[i + 1] ?? 0)
    if (to > from) out.push(from, to)
  }
  return out
}

/** The face that a swept body shows where it parts along a run, seen from below (`up` false) or from above. */
export function partingFace(zone: SweptZone, run: Run, { theta, cos, sin, closed }: PlanAngles, up: boolean): Mesh {
  const { r, y, dr, dy } = run
  const flip = up ? -1 : 1
  const norm = Math.hypot(dr, dy)
  const positions: number[] = []
  const normals: number[] = []
  const indices: number[] = []
  const outline: number[] = []
  let before: readonly number[] = []
  for (let k = 0; k < theta.length; k++) {
    const c = cos[k] ?? 1
    const s = sin[k] ?? 0
    const spans = inside(polygonAt(zone.corners, theta[k] ?? 0), run)
    const base = positions.length / 3
    for (const t of spans) {
      positions.push((r + dr * t) * c, y + dy * t, (r + dr * t) * s)
      normals.push((flip * dy * c) / norm, (-flip * dr) / norm, (flip * dy * s) / norm)
    }
    if (k > 0 && before.length === spans.length)
      for (let i = 0; i < spans.length; i += 2) {
        const [a, b, c2, d] = [base - before.length + i, base - before.length + i + 1, base + i + 1, base + i]
        if (up) indices.push(a, c2, b, a, d, c2)
        else indices.push(a, b, c2, a, c2, d)
      }
    const isEnd = k === 0 || k === theta.length - 1
    if (!closed && isEnd) for (let i = base; i < base + spans.length; i += 2) outline.push(...positions.slice(3 * i, 3 * i + 6))
    before = spans
  }
  return {
    positions: Float32Array.from(positions),
    normals: Float32Array.from(normals),
    indices: Uint32Array.from(indices),
    outsideCount: indices.length,
    outline: Float32Array.from(outline),
  }
}
