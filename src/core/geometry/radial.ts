import type { Surface } from './surface.ts'

/**
 * A radius that may change with the plan angle [m]:
 * a circle; a rectangle centred on the axis, given by half its sides along x and z; or where two surfaces meet.
 */
export type Radial =
  | Readonly<{ kind: 'circle'; r: number }>
  | Readonly<{ kind: 'rectangle'; hx: number; hz: number }>
  | Readonly<{ kind: 'meeting'; lower: Surface; upper: Surface }>

export const circle = (r: number): Radial => ({ kind: 'circle', r })
export const rectangle = (width: number, depth: number): Radial => ({ kind: 'rectangle', hx: width / 2, hz: depth / 2 })
export const meeting = (lower: Surface, upper: Surface): Radial => ({ kind: 'meeting', lower, upper })
export const axis: Radial = circle(0)

export const isAxis = (radial: Radial): boolean => radial.kind === 'circle' && radial.r === 0

/** Radius [m] in the direction (cos, sin) of the plan angle. */
export function radiusAlong(radial: Radial, cos: number, sin: number): number {
  switch (radial.kind) {
    case 'circle':
      return radial.r
    case 'rectangle': {
      const c = Math.abs(cos)
      const s = Math.abs(sin)
      return c * radial.hz > s * radial.hx ? radial.hx / c : radial.hz / s
    }
    case 'meeting': {
      const { m, dx, dz, c } = meetingSlope(radial)
      return c / (m + dx * cos + dz * sin)
    }
  }
}

/** Plan angles [rad, 0..2pi) at which the radius has a corner. */
export function cornerAngles(radial: Radial): number[] {
  if (radial.kind !== 'rectangle') return []
  const a = Math.atan2(radial.hz, radial.hx)
  return [a, Math.PI - a, Math.PI + a, 2 * Math.PI - a]
}

/** Integrals over a full turn of r^2 [m2], of r^3, and of r^3 cos theta and r^3 sin theta [m3]. */
export type TurnIntegrals = Readonly<{ r2: number; r3: number; r3x: number; r3z: number }>

/**
 * Integrals over a full turn, in closed form; null where two surfaces meet at no finite radius in some direction.
 * Circle and centred rectangle: r^3 cos and r^3 sin integrate to zero by symmetry, so a sloping plane adds nothing.
 * Meeting: r = c/(m + d cos phi), an ellipse with a focus on the axis; with s^2 = m^2 - d^2 the integrals of its powers are
 * 2 pi m c^2/s^3, pi (2 m^2 + d^2) c^3/s^5 and, times cos phi, -3 pi m d c^3/s^5.
 * Source: definition (rectangle: integral of sec^3; meeting: integrals of (m + d cos phi)^-n, n = 2, 3).
 */
export function turnIntegrals(radial: Radial): TurnIntegrals | null {
  switch (radial.kind) {
    case 'circle':
      return { r2: 2 * Math.PI * radial.r ** 2, r3: 2 * Math.PI * radial.r ** 3, r3x: 0, r3z: 0 }
    case 'rectangle': {
      const { hx, hz } = radial
      const diagonal = Math.sqrt(hx * hx + hz * hz)
      const face = (near: number, half: number) => near * half * diagonal + near ** 3 * Math.asinh(half / near)
      return { r2: 8 * hx * hz, r3: 2 * face(hx, hz) + 2 * face(hz, hx), r3x: 0, r3z: 0 }
    }
    case 'meeting': {
      const { m, dx, dz, c } = meetingSlope(radial)
      const square = m * m - dx * dx - dz * dz
      if (!(m > 0 && c > 0 && square > 0)) return null
      const s = Math.sqrt(square)
      const cube = (Math.PI * c ** 3) / s ** 5
      return {
        r2: (2 * Math.PI * m * c * c) / s ** 3,
        r3: cube * (2 * m * m + dx * dx + dz * dz),
        r3x: -3 * m * dx * cube,
        r3z: -3 * m * dz * cube,
      }
    }
  }
}

/** How two surfaces close on each other: their distance on the axis [m], and its fall along the radius, r = c/(m + dx cos + dz sin). */
const meetingSlope = ({ lower, upper }: Extract<Radial, { kind: 'meeting' }>) => ({
  c: upper.a - lower.a,
  m: lower.m - upper.m,
  dx: lower.gx - upper.gx,
  dz: lower.gz - upper.gz,
})

/** Least and greatest radius [m] over a turn; null where there is no greatest. */
export function radiusRange(radial: Radial): readonly [near: number, far: number] | null {
  if (radial.kind === 'circle') return [radial.r, radial.r]
  if (radial.kind === 'rectangle') return [Math.min(radial.hx, radial.hz), Math.hypot(radial.hx, radial.hz)]
  const { m, dx, dz, c } = meetingSlope(radial)
  const d = Math.hypot(dx, dz)
  return m > d && c > 0 ? [c / (m + d), c / (m - d)] : null
}
