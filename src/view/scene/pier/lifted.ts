import { rodLength } from '../../../core/geometry/placed.ts'
import type { Role } from '../../../core/model/solid.ts'
import type { Zone } from '../../../core/model/zone.ts'

/** A bar through a leaning post lies askew by no more than this share of its length. */
const nearlyLevel = 0.1

export type Offset = readonly [number, number, number]

/** How far each body is lifted when the picture is taken apart: steps from the ground up, as things came into the hole. */
const order: Readonly<Record<Role, number>> = {
  'soil-lower': 0,
  soil: 0,
  topsoil: 1,
  gravel: 2,
  concrete: 3,
  'dry-mix': 3,
  'flowable-fill': 3,
  granular: 3,
  backfill: 4,
  mulch: 6,
  wood: 5,
  bar: 5,
  steel: 5,
}

/**
 * Offsets [m] by zone id with the parts fully apart. `depth` is the hole's depth [m]: the step between neighbours is a share of it.
 * Bars go out along their own length, away from the axis, so that they come free of the post.
 */
export function liftedOffsets(zones: readonly Zone[], depth: number): ReadonlyMap<string, Offset> {
  const step = 0.2 * depth
  const offsets = new Map<string, Offset>()
  const lowest = (zone: Zone): number =>
    zone.build === 'swept' ? (zone.corners[0] && 'at' in zone.corners[0] ? zone.corners[0].y.a : 0) : 0
  const ranked = [...zones].sort((a, b) => order[a.role] - order[b.role] || lowest(a) - lowest(b))
  let rank = 0
  let lastRole: Role | null = null
  for (const zone of ranked) {
    const together = lastRole !== null && order[lastRole] === order[zone.role] && order[zone.role] === 5
    if (order[zone.role] > 0 && !together) rank++
    lastRole = zone.role
    const up = rank * step
    if (zone.role === 'bar' && zone.build === 'placed') {
      const solid = zone.solids[0]
      const isLevel = solid?.kind === 'rod' && Math.abs(solid.to[1] - solid.from[1]) < nearlyLevel * rodLength(solid.from, solid.to)
      if (solid?.kind === 'rod' && isLevel) {
        const length = Math.hypot(solid.to[0] - solid.from[0], solid.to[2] - solid.from[2])
        const out = 0.75 * length + 0.1
        offsets.set(zone.id, [((solid.to[0] - solid.from[0]) / length) * out, up, ((solid.to[2] - solid.from[2]) / length) * out])
        continue
      }
    }
    offsets.set(zone.id, [0, up, 0])
  }
  return offsets
}
