import { cornersBelow } from './clipBelow.ts'
import { type Corner, cornerPoint, heightAlong } from './corner.ts'
import { breakAngles, polygonMoment, sweptVolume } from './measure.ts'
import { convexHull, outlineArea } from './convexHull.ts'
import { type ConvexSolid, type Point3, solidVolume } from './placed.ts'
import { integrateTurn } from './quadrature.ts'
import type { Radial } from './radial.ts'
import type { Surface } from './surface.ts'

type Point = readonly [number, number]

/** Samples round the turn in search of places where a corner crosses the surface; crossings closer than this are missed. */
const samples = 720

/**
 * Volume [m3] of the part of a swept body that lies below a surface: exact where that part has corners of its own. Otherwise the
 * polygon is clipped at the surface's line at every angle, and its moment integrated between all angles at which a corner
 * crosses the surface.
 */
export function volumeBelow(corners: readonly Corner[], surface: Surface, extraBreaks: readonly number[] = []): number {
  const below = cornersBelow(corners, surface)
  if (below !== null) return below.length === 0 ? 0 : sweptVolume(below, extraBreaks).value
  return integratedBelow(corners, surface, extraBreaks)
}

/** The same by integrating alone: what the exact way is checked against. */
export function integratedBelow(corners: readonly Corner[], surface: Surface, extraBreaks: readonly number[] = []): number {
  const breaks = [...breakAngles(corners, extraBreaks), ...crossings(corners, surface)]
  return integrateTurn((cos, sin) => {
    const points = corners.map((c) => cornerPoint(c, cos, sin))
    return polygonMoment(clipBelow(points, (p) => p[1] - heightAlong(surface, p[0], cos, sin)))
  }, breaks)
}

function clipBelow(points: readonly Point[], above: (p: Point) => number): Point[] {
  const kept: Point[] = []
  points.forEach((p, i) => {
    const q = points[(i + 1) % points.length] ?? p
    const fp = above(p)
    const fq = above(q)
    if (fp <= 0) kept.push(p)
    if (fp < 0 !== fq < 0 && fp !== 0 && fq !== 0) {
      const t = fp / (fp - fq)
      kept.push([p[0] + t * (q[0] - p[0]), p[1] + t * (q[1] - p[1])])
    }
  })
  return kept
}

/** Plan angles [rad] at which a corner passes through a surface. */
export const crossings = (corners: readonly Corner[], surface: Surface): number[] =>
  corners.flatMap((c) => {
    const exact = 'at' in c ? passingAngles(c.at, c.y, surface) : null
    if (exact !== null) return exact
    return signChanges((cos, sin) => {
      const [r, y] = cornerPoint(c, cos, sin)
      return y - heightAlong(surface, r, cos, sin)
    })
  })

/** The same in closed form, for a circle, and for a rectangle where the two surfaces part by a plane; else null. */
function passingAngles(at: Radial, y: Surface, surface: Surface): number[] | null {
  const [rise, m, gx, gz] = [y.a - surface.a, y.m - surface.m, y.gx - surface.gx, y.gz - surface.gz]
  if (at.kind === 'circle') {
    const share = -(rise + m * at.r) / (at.r * Math.hypot(gx, gz))
    if (!(Math.abs(share) < 1)) return []
    const steepest = Math.atan2(gz, gx)
    return [steepest + Math.acos(share), steepest - Math.acos(share)]
  }
  if (at.kind === 'meeting' || m !== 0) return null
  const onSides = [-at.hx, at.hx].map((x) => [x, -(rise + gx * x) / gz] as const).filter(([, z]) => Math.abs(z) <= at.hz)
  const onEnds = [-at.hz, at.hz].map((z) => [-(rise + gz * z) / gx, z] as const).filter(([x]) => Math.abs(x) <= at.hx)
  return [...onSides, ...onEnds].map(([x, z]) => Math.atan2(z, x))
}

/** Plan angles [rad] at which f changes sign, found by sampling and narrowed to the last bit. */
export function signChanges(f: (cos: number, sin: number) => number): number[] {
  const step = (2 * Math.PI) / samples
  const at = (theta: number) => f(Math.cos(theta), Math.sin(theta))
  const found: number[] = []
  let last = at(0)
  for (let k = 1; k <= samples; k++) {
    const next = at(k * step)
    if (last < 0 !== next < 0 && last !== next) found.push(bisect(at, (k - 1) * step, k * step))
    last = next
  }
  return found
}

/** Root of f between a and b, where f changes sign, to the last bit. */
export function bisect(f: (x: number) => number, a: number, b: number): number {
  let low = a
  let high = b
  const lowSide = f(low) < 0
  for (let pass = 0; pass < 80; pass++) {
    const middle = (low + high) / 2
    if (middle === low || middle === high) break
    if (f(middle) < 0 === lowSide) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/**
 * Volume [m3] of placed parts below a level: exact for boxes, prisms and upright rods; a sloping or level rod is split along its axis.
 */
export const placedVolumeBelow = (solids: readonly ConvexSolid[], y: number): number =>
  solids.reduce((sum, solid) => {
    if (solid.kind === 'prism') return sum + prismBelow([...solid.from, ...solid.to], edgesOf(solid), y)
    const low = solid.kind === 'box' ? solid.centre[1] - solid.half[1] : Math.min(solid.from[1], solid.to[1])
    const high = solid.kind === 'box' ? solid.centre[1] + solid.half[1] : Math.max(solid.from[1], solid.to[1])
    const share = high > low ? Math.min(Math.max((y - low) / (high - low), 0), 1) : y > low ? 1 : 0
    return sum + share * solidVolume(solid)
  }, 0)

type Edge3 = readonly [Point3, Point3]
const edgesOf = ({ from, to }: Extract<ConvexSolid, { kind: 'prism' }>): Edge3[] =>
  from.flatMap((p, i): Edge3[] => {
    const [q, a, b] = [from[(i + 1) % from.length], to[i], to[(i + 1) % to.length]]
    return q && a && b
      ? [
          [p, q],
          [a, b],
          [p, a],
        ]
      : []
  })

/** Area of level slices is a parabola in the height between the levels of two corners: Simpson's rule is exact there. */
function prismBelow(points: readonly Point3[], edges: readonly Edge3[], y: number): number {
  const heights = [...points.map((p) => p[1]), y].filter((at) => at <= y).sort((a, b) => a - b)
  const slice = (at: number): number =>
    Math.abs(
      outlineArea(
        convexHull(
          edges.flatMap(([p, q]): Point[] => {
            if ((p[1] - at) * (q[1] - at) > 0 || p[1] === q[1]) return []
            const t = (at - p[1]) / (q[1] - p[1])
            return [[p[0] + t * (q[0] - p[0]), p[2] + t * (q[2] - p[2])]]
          }),
        ),
      ),
    )
  let sum = 0
  for (let i = 1; i < heights.length; i++) {
    const [a = y, b = y] = [heights[i - 1], heights[i]]
    // A whisker inside the ends: the slice at a level face is the face itself, whichever side it is seen from.
    const whisker = (b - a) * 1e-9
    if (b > a) sum += ((b - a) / 6) * (slice(a + whisker) + 4 * slice((a + b) / 2) + slice(b - whisker))
  }
  return sum
}
