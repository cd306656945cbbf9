import { type CubicMetres, cubicMetres, type SquareMetres, squareMetres } from '../units/quantity.ts'
import type { Measure } from '../model/solid.ts'

export type Point3 = readonly [number, number, number]

/**
 * Convex parts that are placed, not swept: a straight round rod between two points; a box given by its centre, half sizes along
 * its own axes and a turn about the upright axis (plan angle, from +x toward +z); or a right prism between two like outlines,
 * which run right-handed about the way from the first to the second. Metres, radians.
 */
export type ConvexSolid =
  | Readonly<{ kind: 'rod'; from: Point3; to: Point3; radius: number }>
  | Readonly<{ kind: 'box'; centre: Point3; half: Point3; turn: number }>
  | Readonly<{ kind: 'prism'; from: readonly Point3[]; to: readonly Point3[] }>

export const rod = (from: Point3, to: Point3, radius: number): ConvexSolid => ({ kind: 'rod', from, to, radius })
export const box = (centre: Point3, half: Point3, turn = 0): ConvexSolid => ({ kind: 'box', centre, half, turn })

export const prism = (from: readonly Point3[], to: readonly Point3[]): ConvexSolid => ({ kind: 'prism', from, to })

export const rodLength = (from: Point3, to: Point3): number =>
  Math.sqrt((to[0] - from[0]) ** 2 + (to[1] - from[1]) ** 2 + (to[2] - from[2]) ** 2)

/** End area [m2], circumference and length [m] of a part that is the same from end to end. */
function girth(solid: ConvexSolid): Readonly<{ area: number; around: number; length: number }> {
  if (solid.kind === 'rod') {
    const { from, to, radius } = solid
    return { area: Math.PI * radius ** 2, around: 2 * Math.PI * radius, length: rodLength(from, to) }
  }
  if (solid.kind === 'box') {
    const [a, b, c] = solid.half
    return { area: 4 * a * c, around: 4 * (a + c), length: 2 * b }
  }
  const { from, to } = solid
  const origin = from[0] ?? [0, 0, 0]
  const next = (i: number): Point3 => from[(i + 1) % from.length] ?? origin
  const twice = from.map((p, i) => cross(minus(p, origin), minus(next(i), origin)))
  const area = Math.hypot(...[0, 1, 2].map((k) => twice.reduce((sum, one) => sum + (one[k] ?? 0), 0))) / 2
  return { area, around: from.reduce((sum, p, i) => sum + rodLength(p, next(i)), 0), length: rodLength(origin, to[0] ?? origin) }
}

/** Middle of a part. */
export function middleOf(solid: ConvexSolid): Point3 {
  if (solid.kind === 'box') return solid.centre
  const ends = solid.kind === 'rod' ? [solid.from, solid.to] : [...solid.from, ...solid.to]
  const mean = (k: 0 | 1 | 2) => ends.reduce((sum, p) => sum + p[k], 0) / ends.length
  return [mean(0), mean(1), mean(2)]
}

/** Volume [m3] of one part. */
export function solidVolume(solid: ConvexSolid): number {
  const { area, length } = girth(solid)
  return area * length
}

/** Volume [m3] of parts that do not overlap each other. */
export const placedVolume = (solids: readonly ConvexSolid[]): Measure<CubicMetres> => ({
  value: cubicMetres(solids.reduce((sum, solid) => sum + solidVolume(solid), 0)),
  method: 'closed form',
})

/** Area [m2] of all faces. */
export function placedSurface(solids: readonly ConvexSolid[]): Measure<SquareMetres> {
  const value = solids.reduce((sum, solid) => {
    const { area, around, length } = girth(solid)
    return sum + 2 * area + around * length
  }, 0)
  return { value: squareMetres(value), method: 'closed form' }
}

/**
 * Corner points of a part as two rings to be joined, right-handed about the way from the first to the second:
 * for a rod two rings of `sides`, for a box its lower and upper rectangle, for a prism its own two.
 */
export function placedRings(solid: ConvexSolid, sides: number): Readonly<{ from: readonly Point3[]; to: readonly Point3[] }> {
  if (solid.kind === 'prism') return solid
  if (solid.kind === 'box') {
    const [x, y, z] = solid.centre
    const [hx, hy, hz] = solid.half
    const cos = Math.cos(solid.turn)
    const sin = Math.sin(solid.turn)
    const plan: readonly (readonly [number, number])[] = [
      [hx, hz],
      [hx, -hz],
      [-hx, -hz],
      [-hx, hz],
    ]
    const ring = (dy: number) => plan.map(([u, v]): Point3 => [x + u * cos - v * sin, y + dy, z + u * sin + v * cos])
    return { from: ring(-hy), to: ring(hy) }
  }
  const { from, to, radius } = solid
  const length = rodLength(from, to)
  const d: Point3 = [(to[0] - from[0]) / length, (to[1] - from[1]) / length, (to[2] - from[2]) / length]
  const seed: Point3 = Math.abs(d[1]) < 0.9 ? [0, 1, 0] : [1, 0, 0]
  const u = normalise(cross(seed, d))
  const v = cross(d, u)
  const ring = (p: Point3) =>
    Array.from({ length: sides }, (_, i): Point3 => {
      const turn = (2 * Math.PI * i) / sides
      const c = radius * Math.cos(turn)
      const s = radius * Math.sin(turn)
      return [p[0] + c * u[0] + s * v[0], p[1] + c * u[1] + s * v[1], p[2] + c * u[2] + s * v[2]]
    })
  return { from: ring(from), to: ring(to) }
}

const minus = (a: Point3, b: Point3): Point3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
export const cross = (a: Point3, b: Point3): Point3 => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
export function normalise(a: Point3): Point3 {
  const length = Math.hypot(a[0], a[1], a[2]) || 1
  return [a[0] / length, a[1] / length, a[2] / length]
}
