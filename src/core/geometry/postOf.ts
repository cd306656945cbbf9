import type { Zone } from '../model/zone.ts'
import type { LeaningPost } from './leaningPost.ts'
import { type Radial, radiusRange } from './radial.ts'

/** The post among the zones of a pier: its outline as it was sawn, and how it leans; null for a plumb one. */
export type PostSeen = Readonly<{ outline: Radial; leaning: LeaningPost | null }>

/** @returns null when there is no wood among the zones */
export function postOf(zones: readonly Zone[]): PostSeen | null {
  for (const zone of zones) {
    if (zone.role !== 'wood') continue
    if (zone.build === 'placed') return zone.leaning ? { outline: zone.leaning.outline, leaning: zone.leaning } : null
    for (const corner of zone.corners)
      if ('at' in corner && (radiusRange(corner.at)?.[0] ?? 0) > 0) return { outline: corner.at, leaning: null }
  }
  return null
}
