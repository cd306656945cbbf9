import type { Metres } from '../../units/quantity.ts'
import { cited } from '../cited.ts'

const inches = (printed: number) => cited<Metres>(printed, 'in', 'irc-r401-3', 'read')
/**
 * Fall of the ground away from a building's foundation: 6 in within the first 10 ft, which is 5 %, not 6. Swales and paved
 * ground within 10 ft fall 2 %. Written for foundation walls; good practice for piers in the open. Source: irc-r401-3.
 */
export const lotDrainage = {
  fall: inches(6),
  within: cited<Metres>(10, 'ft', 'irc-r401-3', 'read'),
  swaleFall: cited(2, '%', 'irc-r401-3', 'read'),
  pavedFall: cited(2, '%', 'irc-r401-3', 'read'),
} as const

/** Rise of a crown at the post below which a finished top tends to end up flat, and the usual rise: project defaults, no standard was found. Source: assumption. */
export const crownRise = {
  least: cited<Metres>(0.5, 'in', 'assumption', 'assumed here'),
  usual: cited<Metres>(1, 'in', 'assumption', 'assumed here'),
} as const

const millimetres = (printed: number, source: 'timber-splash-guide' | 'common-practice') =>
  cited<Metres>(printed, 'mm', source, source === 'common-practice' ? 'common practice' : 'secondary')
/**
 * Height that rain splashes wood: clearance over bare ground and over gravel or a drained strip, and what a heavy rain is
 * said to reach. Source: timber-splash-guide; the last is common practice.
 */
export const splashHeight = {
  ground: millimetres(300, 'timber-splash-guide'),
  gravel: millimetres(150, 'timber-splash-guide'),
  heavyRain: millimetres(500, 'common-practice'),
} as const

/** Siding above ground and above paved slabs. Source: irc-r317-1-5. */
export const sidingClearance = {
  ground: cited<Metres>(6, 'in', 'irc-r317-1-5', 'read'),
  slab: cited<Metres>(2, 'in', 'irc-r317-1-5', 'read'),
} as const
