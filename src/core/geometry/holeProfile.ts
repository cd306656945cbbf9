import type { Hole } from '../model/spec.ts'
import { type Corner, corner, cornerPoint, type Edge, heightAlong } from './corner.ts'
import { axis, circle, meeting, type Radial } from './radial.ts'
import { level, type Surface } from './surface.ts'

/**
 * The wall of the hole, bottom to top. Every corner but the last lies level all round; the last is where the wall meets
 * grade. `next` is the edge that leads up to the following corner.
 */
export type HoleProfile = Readonly<{
  grade: Surface
  /** Signed height of the cleaned bottom [m]. */
  bottom: number
  shaftRadius: number
  bottomRadius: number
  wall: readonly Readonly<{ at: Radial; y: Surface; next: Edge }>[]
}>

/** Cone through (r1, y1) and (r2, y2), or upright when both radii are one. */
function wallEdge(r1: number, y1: number, r2: number, y2: number): Edge {
  if (r1 === r2) return 'upright'
  const m = (y2 - y1) / (r2 - r1)
  return { a: y1 - m * r1, m, gx: 0, gz: 0 }
}

/** @param hole all lengths [m] @param grade finished grade, through the origin */
export function holeProfile(hole: Hole, grade: Surface): HoleProfile {
  const shaft = hole.diameter / 2
  const bottomRadius = hole.bell ? hole.bell.diameter / 2 : shaft
  const levels: [number, number][] = [[bottomRadius, -hole.depth]]
  if (hole.bell) levels.push([shaft, -hole.depth + hole.bell.height])
  if (hole.flare) levels.push([shaft, -hole.flare.depth])
  const wall = levels.map(([r, y], i) => {
    const above = levels[i + 1]
    return { at: circle(r), y: level(y), next: above ? wallEdge(r, y, above[0], above[1]) : ('upright' as Edge) }
  })
  const last = wall[wall.length - 1]
  if (hole.flare && last) {
    const flare = wallEdge(shaft, -hole.flare.depth, hole.flare.diameter / 2, 0)
    wall[wall.length - 1] = { ...last, next: flare }
    wall.push({ at: flare === 'upright' || flare === 'straight' ? circle(shaft) : meeting(flare, grade), y: grade, next: 'upright' })
  } else wall.push({ at: circle(shaft), y: grade, next: 'upright' })
  return { grade, bottom: -hole.depth, shaftRadius: shaft, bottomRadius, wall }
}

/** Radius of the wall at a level [m]; the level must lie below grade all round. */
export function wallRadius(profile: HoleProfile, y: number): number {
  for (let i = profile.wall.length - 2; i >= 0; i--) {
    const from = profile.wall[i]
    if (!from || y < from.y.a) continue
    const r = from.at.kind === 'circle' ? from.at.r : 0
    return from.next === 'upright' || from.next === 'straight' ? r : (y - from.next.a) / from.next.m
  }
  return profile.bottomRadius
}

/** Radius of the wall where it meets grade. */
export const mouth = (profile: HoleProfile): Radial => profile.wall[profile.wall.length - 1]?.at ?? circle(profile.shaftRadius)

/**
 * Wall corners from level `from` up to level `to`, or up to grade when `to` is null. The last corner's edge is left
 * 'upright' for the caller to say how the polygon goes on.
 */
export function wallBetween(profile: HoleProfile, from: number, to: number | null): Corner[] {
  const { wall } = profile
  const corners: Corner[] = []
  for (let i = 0; i < wall.length; i++) {
    const here = wall[i]
    if (!here) continue
    const isMouth = i === wall.length - 1
    if (isMouth) {
      if (to === null) corners.push(here)
      continue
    }
    const above = wall[i + 1]
    const topOfEdge = above && i + 1 < wall.length - 1 ? above.y.a : Number.POSITIVE_INFINITY
    if (topOfEdge <= from) continue
    if (to !== null && here.y.a >= to) break
    corners.push(here.y.a < from ? corner(circle(wallRadius(profile, from)), level(from), here.next) : here)
    if (to !== null && to <= topOfEdge) {
      corners.push(corner(circle(wallRadius(profile, to)), level(to), 'upright'))
      break
    }
  }
  return corners
}

/** The hole as one body: bottom, wall, grade. */
export function holeCorners(profile: HoleProfile): Corner[] {
  const corners = wallBetween(profile, profile.bottom, null)
  const top = corners.pop()
  return [
    corner(axis, level(profile.bottom), level(profile.bottom)),
    ...corners,
    ...(top && 'at' in top ? [corner(top.at, top.y, profile.grade)] : []),
    corner(axis, profile.grade, 'upright'),
  ]
}

type Point = readonly [number, number]

/** The wall as a polyline from the axis at the bottom to the mouth, [n][2] metres (r, y), in one direction. */
export function profileLine(profile: HoleProfile, cos: number, sin: number): Point[] {
  return [[0, profile.bottom] as const, ...profile.wall.map((c) => cornerPoint(c, cos, sin))]
}

/**
 * Where a surface that lies below grade crosses the wall line, from the top down: position along the line
 * (whole part = corner index, fraction = share of the way to the next), or -1 when it passes under the hole's bottom.
 */
export function crossingPosition(line: readonly Point[], surface: Surface, cos: number, sin: number): number {
  const above = (p: Point) => p[1] - heightAlong(surface, p[0], cos, sin)
  for (let i = line.length - 2; i >= 0; i--) {
    const low = line[i]
    const high = line[i + 1]
    if (!low || !high) continue
    const fLow = above(low)
    if (fLow > 0) continue
    const fHigh = above(high)
    return i + (fHigh === fLow ? 0 : -fLow / (fHigh - fLow))
  }
  return -1
}

export function pointOnLine(line: readonly Point[], position: number): Point {
  const i = Math.min(Math.max(Math.floor(position), 0), line.length - 2)
  const p = line[i] ?? [0, 0]
  const q = line[i + 1] ?? p
  const t = Math.min(Math.max(position - i, 0), 1)
  return [p[0] + t * (q[0] - p[0]), p[1] + t * (q[1] - p[1])]
}

/** Plan angles at which a plane parallel to grade, `down` below it [m], passes a level corner of the wall. */
export function crossingAngles(profile: HoleProfile, down: number): number[] {
  const { gx, gz } = profile.grade
  const slope = Math.hypot(gx, gz)
  const uphill = Math.atan2(gz, gx)
  return profile.wall.slice(0, -1).flatMap((c) => {
    const r = c.at.kind === 'circle' ? c.at.r : 0
    const share = (c.y.a + down) / (r * slope)
    if (!(Math.abs(share) < 1)) return []
    const turn = Math.acos(share)
    return [uphill + turn, uphill - turn]
  })
}
