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
      const { lower, upper } = radial
      const slope = lower.m - upper.m + (lower.gx - upper.gx) * cos + (lower.gz - upper.gz) * sin
      return (upper.a - lower.a) / slope
    }
  }
}

/** Plan angles [rad, 0..2pi) at which the radius has a corner. */
export function cornerAngles(radial: Radial): number[] {
  if (radial.kind !== 'rectangle') return []
  const a = Math.atan2(radial.hz, radial.hx)
  return [a, Math.PI - a, Math.PI + a, 2 * Math.PI - a]
}

/**
 * Integrals over a full turn of r^2 [m2] and r^3 [m3], exact for circles and centred rectangles, else null.
 * For both, r^3 cos and r^3 sin integrate to zero by symmetry, so a sloping plane adds nothing.
 * Source: definition (rectangle: integral of sec^3).
 */
export function turnIntegrals(radial: Radial): Readonly<{ r2: number; r3: number }> | null {
  switch (radial.kind) {
    case 'circle':
      return { r2: 2 * Math.PI * radial.r ** 2, r3: 2 * Math.PI * radial.r ** 3 }
    case 'rectangle': {
      const { hx, hz } = radial
      const diagonal = Math.sqrt(hx * hx + hz * hz)
      const face = (near: number, half: number) => near * half * diagonal + near ** 3 * Math.asinh(half / near)
      return { r2: 8 * hx * hz, r3: 2 * face(hx, hz) + 2 * face(hz, hx) }
    }
    case 'meeting':
      return null
  }
}
