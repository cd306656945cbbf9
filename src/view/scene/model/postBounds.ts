import type { Zone } from '../../../core/model/zone.ts'
import type { PostBounds } from '../materials/zoneMaterials.ts'

/** Sides of the post [m], read off its outline; null when there is none. */
export function postBounds(zones: readonly Zone[]): PostBounds | null {
  for (const zone of zones) {
    if (zone.role !== 'wood' || zone.build !== 'swept') continue
    for (const corner of zone.corners) {
      if (!('at' in corner)) continue
      if (corner.at.kind === 'rectangle') return { width: 2 * corner.at.hx, depth: 2 * corner.at.hz }
      if (corner.at.kind === 'circle' && corner.at.r > 0) return { width: 2 * corner.at.r, depth: 2 * corner.at.r }
    }
  }
  return null
}
