import { type ConvexSolid, type Point3, prism, rod } from './placed.ts'
import { gaussLegendre, turnPoints } from './quadrature.ts'
import { cornerAngles, type Radial, radiusAlong } from './radial.ts'
import type { Surface } from './surface.ts'

/**
 * A post that stands off plumb: turned as a rigid body over the edge of its foot, which stays where it stood.
 * Its own frame: u across its width, v across its depth, h up along it from the middle of its foot [m].
 */
export type LeaningPost = Readonly<{
  outline: Radial
  /** From its foot to its top along itself [m]. */
  length: number
  /** Off plumb [rad]. */
  lean: number
  /** Plan angle that its top leans toward [rad]. */
  toward: number
  /** Middle of its foot. */
  foot: Point3
}>

/** Farthest that an outline reaches along a plan angle, square to it [m]. */
export function reachAlong(outline: Radial, angle: number): number {
  if (outline.kind !== 'rectangle') return radiusAlong(outline, 1, 0)
  return outline.hx * Math.abs(Math.cos(angle)) + outline.hz * Math.abs(Math.sin(angle))
}

/**
 * @param outline of the post on the axis @param foot level of its lowest edge [m] @param length of the post [m]
 * @param lean off plumb [rad], over 0 @param toward plan angle [rad]
 */
export function leaningPost(outline: Radial, foot: number, length: number, lean: number, toward: number): LeaningPost {
  const half = reachAlong(outline, toward)
  const away = half * (1 - Math.cos(lean))
  return { outline, length, lean, toward, foot: [away * Math.cos(toward), foot + half * Math.sin(lean), away * Math.sin(toward)] }
}

/** A place in the post's own frame, in the pier's. */
export function placeOn({ foot, lean, toward }: LeaningPost, u: number, h: number, v: number): Point3 {
  const [tx, tz] = [Math.cos(toward), Math.sin(toward)]
  const along = u * tx + v * tz
  const beside = v * tx - u * tz
  const out = along * Math.cos(lean) + h * Math.sin(lean)
  return [foot[0] + out * tx - beside * tz, foot[1] + h * Math.cos(lean) - along * Math.sin(lean), foot[2] + out * tz + beside * tx]
}

/** How far the post's middle line stands from the pier's axis at a level, toward the lean [m]. */
export const shiftAt = ({ foot, lean, toward }: LeaningPost, y: number): number =>
  foot[0] * Math.cos(toward) + foot[2] * Math.sin(toward) + (y - foot[1]) * Math.tan(lean)

const passes = 6

/**
 * Where the line along the post through (u, v) of its foot passes a surface: distance up the post [m], from its foot, not held to its ends.
 * Newton's method: the surface is far from as steep as the post, so each pass gains digits; a plane is met in the first.
 */
export function alongTo(post: LeaningPost, surface: Surface, u: number, v: number): number {
  const [x, y, z] = placeOn(post, u, 0, v)
  const [dx, dz] = [Math.sin(post.lean) * Math.cos(post.toward), Math.sin(post.lean) * Math.sin(post.toward)]
  const dy = Math.cos(post.lean)
  let h = 0
  for (let pass = 0; pass < (surface.m === 0 ? 1 : passes); pass++) {
    const [px, pz] = [x + h * dx, z + h * dz]
    const r = Math.hypot(px, pz)
    const over = y + h * dy - (surface.a + surface.m * r + surface.gx * px + surface.gz * pz)
    const rise = dy - surface.gx * dx - surface.gz * dz - (r > 0 ? (surface.m * (px * dx + pz * dz)) / r : 0)
    h -= over / rise
  }
  return h
}

const rule = gaussLegendre(8)

const areaOf = (outline: Radial): number =>
  outline.kind === 'rectangle' ? 4 * outline.hx * outline.hz : Math.PI * radiusAlong(outline, 1, 0) ** 2

/** Distances up the post to a plane at its four corners and its middle; null where they are no plane: for a cone, or over an end of the post. */
function planeOn(post: LeaningPost, surface: Surface | null): readonly number[] | null {
  const { outline, length } = post
  const [hu, hv] = [reachAlong(outline, 0), reachAlong(outline, Math.PI / 2)]
  const places = [
    [0, 0],
    [hu, hv],
    [hu, -hv],
    [-hu, hv],
    [-hu, -hv],
  ] as const
  if (surface === null) return places.map(() => 0)
  if (surface.m !== 0) return null
  const all = places.map(([u, v]) => alongTo(post, surface, u, v))
  if (all.every((h) => h <= 0)) return places.map(() => 0)
  if (all.every((h) => h >= length)) return places.map(() => length)
  return all.every((h) => h >= 0 && h <= length) ? all : null
}

/**
 * Volume of the post between two surfaces, counted where the upper one is above the lower [m3]. Exact between planes that pass its
 * sides alone and do not cross in it: its section times the length up its middle. Otherwise integrated by Gauss points over the section.
 */
export function postBetween(post: LeaningPost, lower: Surface | null, upper: Surface): number {
  const [from, to] = [planeOn(post, lower), planeOn(post, upper)]
  if (from && to) {
    const runs = to.map((h, i) => h - (from[i] ?? 0))
    if (runs.every((run) => run >= 0)) return (runs[0] ?? 0) * areaOf(post.outline)
    if (runs.every((run) => run <= 0)) return 0
  }
  const held = (surface: Surface, u: number, v: number) => Math.min(Math.max(alongTo(post, surface, u, v), 0), post.length)
  let sum = 0
  for (const { cos, sin, weight } of turnPoints(cornerAngles(post.outline))) {
    const half = radiusAlong(post.outline, cos, sin) / 2
    rule.nodes.forEach((node, i) => {
      const r = half * (1 + node)
      const run = held(upper, r * cos, r * sin) - (lower === null ? 0 : held(lower, r * cos, r * sin))
      sum += Math.max(0, run) * weight * half * (rule.weights[i] ?? 0) * r
    })
  }
  return sum
}

/** Farthest that the post reaches from the pier's axis at a level [m]. */
export function reachAt(post: LeaningPost, y: number): number {
  const shift = shiftAt(post, y)
  const stretch = 1 / Math.cos(post.lean)
  if (post.outline.kind !== 'rectangle') return radiusAlong(post.outline, 1, 0) * stretch + Math.abs(shift)
  const { hx, hz } = post.outline
  const [tx, tz] = [Math.cos(post.toward), Math.sin(post.toward)]
  return Math.max(...[hx, -hx].flatMap((u) => [hz, -hz].map((v) => Math.hypot((u * tx + v * tz) * stretch + shift, v * tx - u * tz))))
}

/** The post as one convex part. */
export function leaningSolid(post: LeaningPost): ConvexSolid {
  const { outline, length } = post
  if (outline.kind !== 'rectangle') return rod(placeOn(post, 0, 0, 0), placeOn(post, 0, length, 0), radiusAlong(outline, 1, 0))
  const ring = (h: number) =>
    [
      [outline.hx, outline.hz],
      [outline.hx, -outline.hz],
      [-outline.hx, -outline.hz],
      [-outline.hx, outline.hz],
    ].map(([u = 0, v = 0]) => placeOn(post, u, h, v))
  return prism(ring(0), ring(length))
}
