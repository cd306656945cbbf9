import { type Corner, corner } from './corner.ts'
import { type HoleProfile, mouth, wallBetween } from './holeProfile.ts'
import { axis, circle, meeting, type Radial } from './radial.ts'
import { heightAt, level, type Surface } from './surface.ts'

/** What stands in the hole: the post's outline and the signed height of its foot [m]; null when nothing does. */
export type Standing = Readonly<{ outline: Radial; foot: number }>

/**
 * How a lift ends at the top: level below grade; at grade; or at a finished top whose rim stands on the shaft's own
 * cylinder at a level of its own, above or below grade.
 */
export type LiftEnd = Readonly<{ kind: 'level'; y: number }> | Readonly<{ kind: 'grade' }> | Readonly<{ kind: 'top'; surface: Surface }>

export const surfaceOf = (profile: HoleProfile, end: LiftEnd): Surface =>
  end.kind === 'level' ? level(end.y) : end.kind === 'grade' ? profile.grade : end.surface

/** Polygon of what fills the hole between level `from` [m] and `end`, round the post where one stands. */
export function liftCorners(profile: HoleProfile, from: number, end: LiftEnd, standing: Standing | null): Corner[] {
  const floor = level(from)
  const rises = standing !== null && !(end.kind === 'level' && standing.foot >= end.y)
  const inside = standing !== null && rises && standing.foot > from
  const start = standing !== null && rises && !inside ? standing.outline : axis
  const ending = wallTop(profile, from, end)
  const top = bare(surfaceOf(profile, end))
  const corners: Corner[] = [corner(start, floor, floor), ...ending]
  if (!rises || standing === null) {
    const landing = end.kind === 'top' ? end.surface.flatWithin : undefined
    if (landing === undefined) return [...corners, corner(axis, top, 'upright')]
    const flat = level(heightAt(surfaceOf(profile, end), 0, 0))
    return [...corners, corner(circle(landing), flat, flat), corner(axis, flat, 'upright')]
  }
  corners.push(corner(standing.outline, top, 'upright'))
  if (inside)
    corners.push(corner(standing.outline, level(standing.foot), level(standing.foot)), corner(axis, level(standing.foot), 'upright'))
  return corners
}

/** The cone or plane without its landing: what outer corners lie on. */
const bare = ({ a, m, gx, gz }: Surface): Surface => ({ a, m, gx, gz })

/** Wall corners from `from` to the end of the lift; the last one's edge runs inward along the end's surface. */
function wallTop(profile: HoleProfile, from: number, end: LiftEnd): Corner[] {
  const top = bare(surfaceOf(profile, end))
  if (end.kind === 'level') return runInward(wallBetween(profile, from, end.y), top)
  if (end.kind === 'grade') return runInward(wallBetween(profile, from, null), top)
  const shaft = circle(profile.shaftRadius)
  const flared = mouth(profile).kind === 'meeting'
  if (flared) {
    return [...runInward(wallBetween(profile, from, null), profile.grade), corner(shaft, profile.grade, 'upright'), corner(shaft, top, top)]
  }
  const corners = wallBetween(profile, from, null).slice(0, -1)
  return [...corners, corner(shaft, top, top)]
}

function runInward(corners: readonly Corner[], along: Surface): Corner[] {
  return corners.map((c, i) => (i === corners.length - 1 ? { ...c, next: along } : c))
}

/** Steepness of a loose heap of soil or mulch, rise over run (1 up in 1.5 out). Source: common practice, no source. */
export const heapSlope = 2 / 3

/**
 * Soil or mulch heaped round the post: `height` [m] above the finished top at radius `inner`, falling off at `heapSlope` until
 * it meets the top itself or, beyond the rim, the ground.
 */
export function heapCorners(profile: HoleProfile, end: LiftEnd, inner: Radial, innerRadius: number, height: number): Corner[] {
  const top = bare(surfaceOf(profile, end))
  const crest = top.a + top.m * innerRadius + height
  const heap: Surface = { a: crest + heapSlope * innerRadius, m: -heapSlope, gx: 0, gz: 0 }
  const rim = profile.shaftRadius
  const reachesRim = end.kind !== 'top' || heightAt(heap, rim, 0) > heightAt(top, rim, 0)
  if (end.kind === 'top' && !reachesRim) {
    return [corner(inner, top, top), corner(meeting(top, heap), top, heap), corner(inner, heap, 'upright')]
  }
  const toe = corner(meeting(profile.grade, heap), profile.grade, heap)
  if (end.kind !== 'top') return [corner(inner, profile.grade, profile.grade), toe, corner(inner, heap, 'upright')]
  return [
    corner(inner, top, top),
    corner(circle(rim), top, 'upright'),
    corner(circle(rim), profile.grade, profile.grade),
    toe,
    corner(inner, heap, 'upright'),
  ]
}
