import { type Corner, corner } from './corner.ts'
import { type HoleProfile, mouth, wallBetween } from './holeProfile.ts'
import { axis, circle, type Radial } from './radial.ts'
import { heightAt, level, type Surface } from './surface.ts'

/** What stands in the hole: the post's outline and the signed height of its foot [m]; null when nothing does. */
export type StandingPost = Readonly<{ outline: Radial; foot: number }>

/**
 * How a lift ends at the top: level below grade; at grade; or at a finished top whose rim stands on the shaft's own
 * cylinder at a level of its own, above or below grade.
 */
export type LiftEnd = Readonly<{ kind: 'level'; y: number }> | Readonly<{ kind: 'grade' }> | Readonly<{ kind: 'top'; surface: Surface }>

export const surfaceOf = (profile: HoleProfile, end: LiftEnd): Surface =>
  end.kind === 'level' ? level(end.y) : end.kind === 'grade' ? profile.grade : end.surface

/** Polygon of what fills the hole between level `from` [m] and `end`, round the post where one stands. */
export function liftCorners(profile: HoleProfile, from: number, end: LiftEnd, standing: StandingPost | null): Corner[] {
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
