import type { SectionPolygon } from '../model/solid.ts'
import type { PlacedZone, SweptZone, Zone } from '../model/zone.ts'
import { convexHull } from './convexHull.ts'
import { polygonAt } from './corner.ts'
import { type ConvexSolid, placedRings } from './placed.ts'
import { radiusAlong } from './radial.ts'

type Point = readonly [number, number]

/**
 * The exact section in the upright plane through the axis, [n][2] metres: to the right along the plan angle `facing` [rad], and up.
 * Swept zones are cut; placed parts, and wood unless `cutPost`, are seen whole as silhouettes behind the plane.
 * Order: as the zones come, so that later ones are drawn over earlier ones.
 */
export function sectionPolygons(zones: readonly Zone[], facing: number, options: Readonly<{ cutPost: boolean }>): SectionPolygon[] {
  return zones.flatMap((zone) => {
    if (zone.build === 'placed') return silhouettes(zone, facing)
    if (zone.role === 'wood' && !options.cutPost) return [wholePost(zone, facing)]
    return cutPolygons(zone, facing)
  })
}

const tag = (zone: Zone, cut: boolean, points: readonly Point[]): SectionPolygon => ({
  zone: zone.id,
  role: zone.role,
  label: zone.label,
  cut,
  points,
})

function cutPolygons(zone: SweptZone, facing: number): SectionPolygon[] {
  const right = openAtAxis(distinct(polygonAt(zone.corners, facing)))
  const left = openAtAxis(distinct(polygonAt(zone.corners, facing + Math.PI)))
  const mirrored = left.points.map(([r, y]): Point => [-r, y]).reverse()
  if (right.touches && left.touches) return [tag(zone, true, distinct([...right.points, ...mirrored]))]
  return [right.points, mirrored].filter((points) => points.length > 2).map((points) => tag(zone, true, points))
}

function distinct(points: readonly Point[]): Point[] {
  return points.filter((p, i) => {
    const last = points[(i + points.length - 1) % points.length]
    return !last || Math.abs(p[0] - last[0]) > 1e-12 || Math.abs(p[1] - last[1]) > 1e-12
  })
}

/** Turns the polygon round so that its edge on the axis, if it has one, lies between the last and the first point. */
function openAtAxis(points: readonly Point[]): Readonly<{ points: readonly Point[]; touches: boolean }> {
  const onAxis = points.flatMap((p, i) => (p[0] < 1e-12 ? [i] : []))
  if (onAxis.length < 2) return { points, touches: false }
  const low = onAxis.reduce((best, i) => ((points[i]?.[1] ?? 0) < (points[best]?.[1] ?? 0) ? i : best), onAxis[0] ?? 0)
  const turned = [...points.slice(low), ...points.slice(0, low)]
  const offAxis = turned.filter((p, i) => p[0] >= 1e-12 || i === 0)
  const high = onAxis.reduce((best, i) => Math.max(best, points[i]?.[1] ?? 0), Number.NEGATIVE_INFINITY)
  return { points: [...offAxis, [0, high]], touches: true }
}

/** A whole post seen square on: as wide as its outline reaches across the plane. */
function wholePost(zone: SweptZone, facing: number): SectionPolygon {
  const heights = polygonAt(zone.corners, 0).map((p) => p[1])
  const low = Math.min(...heights)
  const high = Math.max(...heights)
  const first = zone.corners.find((c) => 'at' in c && (c.at.kind === 'rectangle' || (c.at.kind === 'circle' && c.at.r > 0)))
  const outline = first && 'at' in first ? first.at : null
  const reach =
    outline === null
      ? 0
      : outline.kind === 'rectangle'
        ? outline.hx * Math.abs(Math.cos(facing)) + outline.hz * Math.abs(Math.sin(facing))
        : radiusAlong(outline, 1, 0)
  return tag(zone, false, [
    [-reach, low],
    [reach, low],
    [reach, high],
    [-reach, high],
  ])
}

const rodSides = 24

function silhouettes(zone: PlacedZone, facing: number): SectionPolygon[] {
  const cos = Math.cos(facing)
  const sin = Math.sin(facing)
  const project = (solid: ConvexSolid): Point[] => {
    const { from, to } = placedRings(solid, rodSides)
    return convexHull([...from, ...to].map(([x, y, z]): Point => [x * cos + z * sin, y]))
  }
  return zone.solids.map((solid) => tag(zone, false, project(solid)))
}
