import { polygonAt } from '../../core/geometry/corner.ts'
import { placeOn } from '../../core/geometry/leaningPost.ts'
import { placedRings } from '../../core/geometry/placed.ts'
import type { Zone } from '../../core/model/zone.ts'
import { innermost } from './innermost.ts'

/** A place on a cut face: plan angle, radius, height. */
export type FacePlace = readonly [theta: number, r: number, y: number]

const most = 4
/** Taller than this above the ground the post is not named [m]: there its leader would run out of the picture. */
const postNamedBelow = 0.25

/**
 * Places on the cut face at plan angle `theta` where a leader to this zone may end, the best first: above `floor`, and no
 * farther from the axis than `reach` [m].
 */
export function sectionAnchors(zone: Zone, theta: number, floor: number, reach = Infinity): FacePlace[] {
  if (zone.build === 'placed') {
    return zone.solids.flatMap((solid): FacePlace[] => {
      const { from, to } = placedRings(solid, 8)
      const points = [...from, ...to]
      const [x, y, z] = [0, 1, 2].map((k) => points.reduce((sum, p) => sum + (p[k] as number), 0) / points.length) as [
        number,
        number,
        number,
      ]
      const post = zone.leaning
      const ends = post
        ? [postNamedBelow, 0, floor / 2].map((h) => placeOn(post, 0, (h - post.foot[1]) / Math.cos(post.lean), 0))
        : solid.kind === 'rod'
          ? [mix(solid.from, solid.to, 0.1), mix(solid.from, solid.to, 0.9), mix(solid.from, solid.to, 0.5)]
          : [[x, y, z] as const]
      return ends.map(([px, py, pz]): FacePlace => [Math.atan2(pz, px), Math.hypot(px, pz), py])
    })
  }
  const polygon = polygonAt(zone.corners, theta).map(
    ([r, y]) => [Math.min(r, reach), zone.role === 'wood' ? Math.min(y, postNamedBelow) : Math.max(y, floor)] as const,
  )
  return innermost(polygon, most).map(([r, y]): FacePlace => [theta, r, y])
}

const mix = (a: readonly [number, number, number], b: readonly [number, number, number], t: number): readonly [number, number, number] => [
  a[0] + (b[0] - a[0]) * t,
  a[1] + (b[1] - a[1]) * t,
  a[2] + (b[2] - a[2]) * t,
]
