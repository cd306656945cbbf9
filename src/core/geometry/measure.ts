import { type CubicMetres, cubicMetres, type SquareMetres, squareMetres } from '../units/quantity.ts'
import type { Measure } from '../model/solid.ts'
import { type Corner, cornerPoint } from './corner.ts'
import { integrateTurn } from './quadrature.ts'
import { cornerAngles, type TurnIntegrals, turnIntegrals } from './radial.ts'
import type { Surface } from './surface.ts'

type Point = readonly [number, number]

/**
 * Integral of r dr dy over a simple polygon, [n][2] metres (r, y), anticlockwise: volume per radian [m3/rad].
 * Green: the sum over edges of dy (r1^2 + r1 r2 + r2^2) / 6. Source: definition.
 */
export function polygonMoment(points: readonly Point[]): number {
  let sum = 0
  let last = points[points.length - 1]
  for (const p of points) {
    if (last) sum += ((p[1] - last[1]) * (last[0] * last[0] + last[0] * p[0] + p[0] * p[0])) / 6
    last = p
  }
  return sum
}

/** Angles at which any corner turns sharply. */
export const breakAngles = (corners: readonly Corner[], extra: readonly number[] = []): number[] => [
  ...extra,
  ...corners.flatMap((c) => ('at' in c ? cornerAngles(c.at) : [])),
]

/**
 * Volume [m3] of the body that `corners` sweep in a full turn. Closed form when every radius is a circle, a centred rectangle or
 * where a cone meets a plane: with y = a + m r + r (gx cos + gz sin), the integral of r^2/2 dy along each edge is exact in r^2 and r^3.
 * Otherwise the polygon's moment is integrated between break angles.
 */
export function sweptVolume(corners: readonly Corner[], extraBreaks: readonly number[] = []): Measure<CubicMetres> {
  const exact = exactVolume(corners)
  if (exact !== null) return { value: cubicMetres(exact), method: 'closed form' }
  const value = integrateTurn((cos, sin) => polygonMoment(corners.map((c) => cornerPoint(c, cos, sin))), breakAngles(corners, extraBreaks))
  return { value: cubicMetres(value), method: 'integrated' }
}

function exactVolume(corners: readonly Corner[]): number | null {
  const first = corners[0]
  if (!first || !('at' in first)) return null
  let sum = 0
  let from = first
  let near = turnIntegrals(from.at)
  for (let i = 1; i <= corners.length; i++) {
    const to = corners[i % corners.length]
    if (!to || !('at' in to) || from.next === 'straight' || near === null) return null
    // Corners over each other share one radius, whose integrals are the dear part.
    const far = to.at === from.at ? near : turnIntegrals(to.at)
    if (far === null) return null
    if (from.next === 'upright') sum += uprightShare(from.y, to.y, near)
    else {
      const { m, gx, gz } = from.next
      sum += (m * (far.r3 - near.r3) + gx * (far.r3x - near.r3x) + gz * (far.r3z - near.r3z)) / 6
    }
    from = to
    near = far
  }
  return sum
}

/** Integral over a turn of r^2/2 (y2 - y1) at one radius. */
function uprightShare(from: Surface, to: Surface, { r2, r3, r3x, r3z }: TurnIntegrals): number {
  return ((to.a - from.a) * r2 + (to.m - from.m) * r3 + (to.gx - from.gx) * r3x + (to.gz - from.gz) * r3z) / 2
}

/**
 * Area [m2] of the whole boundary. Closed form for circles, rectangles, planes and cones; a rectangle's upright face under a
 * cone, and points that are followed, are integrated.
 */
export function sweptSurface(corners: readonly Corner[], extraBreaks: readonly number[] = []): Measure<SquareMetres> {
  let closed = 0
  const rest: (readonly [Corner, Corner])[] = []
  for (let i = 0; i < corners.length; i++) {
    const from = corners[i]
    const to = corners[(i + 1) % corners.length]
    if (!from || !to) continue
    const exact = exactFace(from, to)
    if (exact === null) rest.push([from, to])
    else closed += exact
  }
  if (rest.length === 0) return { value: squareMetres(closed), method: 'closed form' }
  const breaks = breakAngles(corners, extraBreaks)
  const open = rest.reduce((sum, [from, to]) => sum + integrateTurn((cos, sin) => faceDensity(from, to, cos, sin), breaks), 0)
  return { value: squareMetres(closed + open), method: 'integrated' }
}

function exactFace(from: Corner, to: Corner): number | null {
  if (!('at' in from) || !('at' in to) || from.next === 'straight') return null
  const a = turnIntegrals(from.at)
  const b = turnIntegrals(to.at)
  if (!a || !b) return null
  if (from.next !== 'upright') {
    const { m, gx, gz } = from.next
    if (m !== 0 && (gx !== 0 || gz !== 0)) return null
    return (Math.sqrt(1 + m * m + gx * gx + gz * gz) * Math.abs(b.r2 - a.r2)) / 2
  }
  const rise = to.y.a - from.y.a
  const steepening = to.y.m - from.y.m
  if (from.at.kind === 'circle') return 2 * Math.PI * from.at.r * Math.abs(rise + steepening * from.at.r)
  if (from.at.kind === 'rectangle' && steepening === 0) return 4 * (from.at.hx + from.at.hz) * Math.abs(rise)
  return null
}

/** Area per radian [m2/rad] of the strip between two corners: |dP/dtheta x dP/dt| at three points along it (Simpson). */
function faceDensity(from: Corner, to: Corner, cos: number, sin: number): number {
  const h = 1e-6
  const ends = (turn: number) => {
    const c = cos * Math.cos(turn) - sin * Math.sin(turn)
    const s = sin * Math.cos(turn) + cos * Math.sin(turn)
    return [cornerPoint(from, c, s), cornerPoint(to, c, s)] as const
  }
  const [p, q] = ends(0)
  const [pBack, qBack] = ends(-h)
  const [pOn, qOn] = ends(h)
  const dr = q[0] - p[0]
  const dy = q[1] - p[1]
  const density = (t: number) => {
    const r = p[0] + t * dr
    const rTurn = (pOn[0] + t * (qOn[0] - pOn[0]) - pBack[0] - t * (qBack[0] - pBack[0])) / (2 * h)
    const yTurn = (pOn[1] + t * (qOn[1] - pOn[1]) - pBack[1] - t * (qBack[1] - pBack[1])) / (2 * h)
    return Math.hypot(r * dy, r * dr, rTurn * dy - yTurn * dr)
  }
  return (density(0) + 4 * density(0.5) + density(1)) / 6
}
