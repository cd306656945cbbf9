import type { ZoneLabel } from '../../core/model/saidIds.ts'
import type { Role } from '../../core/model/solid.ts'
import type { Zone } from '../../core/model/zone.ts'
import { wordsOf } from '../../words/index.ts'
import type { Pixel } from './ink.ts'
import type { LabelWish, Side } from './labelColumns.ts'
import { plateSize, wrapped } from './typeSize.ts'

/** What is named first when there is not room for all. */
const importance: Readonly<Record<Role, number>> = {
  wood: 0,
  concrete: 1,
  'dry-mix': 1,
  'flowable-fill': 1,
  granular: 1,
  backfill: 2,
  bar: 3,
  soil: 4,
  steel: 5,
  gravel: 5,
  mulch: 6,
  'soil-lower': 7,
  topsoil: 8,
}

/** Names wider than this are set in two lines [px]. */
const widestLine = (size: number): number => size * 5.8

export const zoneName = (label: ZoneLabel): string => wordsOf('zones')[label]

/** How many names a picture carries: fewer on a narrow one, and while years are looked at, when other words matter more. */
export const mostNames = (isNarrow: boolean, isInYears: boolean): number => (isNarrow ? (isInYears ? 3 : 6) : isInYears ? 5 : 9)

/** Zones worth naming, the most telling first, at most `most`; of parts with one name only the first. */
export function namedZones(zones: readonly Zone[], most: number): Zone[] {
  const seen = new Set<string>()
  return [...zones]
    .sort((a, b) => importance[a.role] - importance[b.role])
    .filter(({ label }) => {
      const name = zoneName(label)
      if (seen.has(name)) return false
      seen.add(name)
      return true
    })
    .slice(0, most)
}

export const wishFor = (zone: Zone, anchors: Readonly<Partial<Record<Side, Pixel>>>, size: number): LabelWish => {
  const lines = wrapped(zoneName(zone.label), size, widestLine(size))
  return { id: zone.id, lines, ...plateSize(lines, size, 'name'), anchors }
}

/** Width of the widest name among `zones` on its plate [px]. */
export const widestName = (zones: readonly Zone[], size: number): number =>
  zones.reduce((widest, zone) => Math.max(widest, plateSize(wrapped(zoneName(zone.label), size, widestLine(size)), size, 'name').width), 0)
