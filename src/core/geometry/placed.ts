import { type CubicMetres, cubicMetres, type SquareMetres, squareMetres } from '../units/quantity.ts'
import type { Measure } from '../model/solid.ts'

export type Point3 = readonly [number, number, number]

/**
 * Convex parts that are placed, not swept: a straight round rod between two points, or a box given by its centre,
 * half sizes along its own axes and a turn about the upright axis (plan angle, from +x toward +z). Metres, radians.
 */
export type ConvexSolid =
  | Readonly<{ kind: 'rod'; from: Point3; to: Point3; radius: number }>
  | Readonly<{ kind: 'box'; centre: Point3; half: Point3; turn: number }>

export const rod = (from: Point3, to: Point3, radius: number): ConvexSolid => ({ kind: 'rod', from, to, radius })
export const box = (centre: Point3, half: Point3, turn = 0): ConvexSolid => ({ kind: 'box', centre, half, turn })

export const rodLength = (from: Point3, to: Point3): number =>
  Math.sqrt((to[0] - from[0]) ** 2 + (to[1] - from[1]) ** 2 + (to[2] - from[2]) ** 2)

/** Volume [m3] of parts that do not overlap each other. */
export function placedVolume(solids: readonly ConvexSolid[]): Measure<CubicMetres> {
  const value = solids.reduce(
    (sum, s) => sum + (s.kind === 'rod' ? Math.PI * s.radius ** 2 * rodLength(s.from, s.to) : 8 * s.half[0] * s.half[1] * s.half[2]),
    0,
  )
  return { value: cubicMetres(value), method: 'closed form' }
}

/** Area [m2] of all faces. */
export function placedSurface(solids: readonly ConvexSolid[]): Measure<SquareMetres> {
  const value = solids.reduce((sum, s) => {
    if (s.kind === 'rod') return sum + 2 * Math.PI * s.radius * (rodLength(s.from, s.to) + s.radius)
    const [a, b, c] = s.half
    return sum + 8 * (a * b + b * c + c * a)
  }, 0)
  return { value: squareMetres(value), method: 'closed form' }
}

/**
 * Corner points of a part as two rings to be joined, right-handed about the way from the first to the second:
 * for a rod two rings of `sides`, for a box its lower and upper rectangle.
 */
export function placedRings(solid: ConvexSolid, sides: number): Readonly<{ from: Point3[]; to: Point3[] }> {
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

export const cross = (a: Point3, b: Point3): Point3 => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
export function normalise(a: Point3): Point3 {
  const length = Math.hypot(a[0], a[1], a[2]) || 1
  return [a[0] / length, a[1] / length, a[2] / length]
}
