import { type Radial, radiusAlong } from './radial.ts'
import type { Surface } from './surface.ts'

/**
 * How the polygon runs from a corner to the next one: straight up or down at one radius, along a surface,
 * or straight between two points that the corners work out for themselves.
 */
export type Edge = 'upright' | 'straight' | Surface

/**
 * A corner of the swept polygon, in the half-plane (r, y) at each plan angle. Either where a radius meets a surface
 * (then integrals are exact), or a point followed by a function of (cos, sin) of the angle.
 */
export type Corner =
  | Readonly<{ at: Radial; y: Surface; next: Edge }>
  | Readonly<{ follow: (cos: number, sin: number) => readonly [number, number]; next: Edge }>

export const corner = (at: Radial, y: Surface, next: Edge): Corner => ({ at, y, next })

/** Height [m] of a surface without a landing at radius r, in the direction (cos, sin). */
export const heightAlong = (s: Surface, r: number, cos: number, sin: number): number => s.a + s.m * r + r * (s.gx * cos + s.gz * sin)

/** The corner's (r, y) [m] in the direction (cos, sin). */
export function cornerPoint(c: Corner, cos: number, sin: number): readonly [number, number] {
  if ('follow' in c) return c.follow(cos, sin)
  const r = radiusAlong(c.at, cos, sin)
  return [r, heightAlong(c.y, r, cos, sin)]
}

/** The polygon at a plan angle: [n][2] metres (r, y), anticlockwise, not closed. */
export function polygonAt(corners: readonly Corner[], theta: number): (readonly [number, number])[] {
  const cos = Math.cos(theta)
  const sin = Math.sin(theta)
  return corners.map((c) => cornerPoint(c, cos, sin))
}
