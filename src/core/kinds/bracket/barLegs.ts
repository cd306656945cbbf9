import { bars } from '../../engineering/tables/bars.ts'
import { type ConvexSolid, rod } from '../../geometry/placed.ts'
import type { BracketSite } from '../../model/kind.ts'
import { toSI } from '../../units/factors.ts'
import { metres } from '../../units/quantity.ts'
import { declareBracket } from '../record.ts'
import { footOf, plateSizes, seatPlate, sidePlateParts } from './plateParts.ts'

const inch = (value: number) => toSI(value, 'in')
const size = '#4' as const
const diameter = bars[size].diameter.value
/** From the middle of the leg to the middle of the bend, inside diameter 6 db. Source: aci-318-19-25-3-1. */
const bend = 3.5 * diameter
/** Straight end of a 180-degree hook: 4 db and 2.5 in at least. Source: aci-318-19-25-3-1. */
const tail = Math.max(4 * diameter, inch(2.5))
/** Chords that the bend is drawn with. */
const chords = 8

const legAt = (site: BracketSite) => 0.3 * site.postWidth

type Levels = Readonly<{ top: number; landing: number; bottom: number }>

/**
 * One bar from `top` down to `bottom` at x, turned back up through half a circle toward +z or -z. Chords stop short of each other, so that
 * none overlaps the next and the volume is theirs. A leg too short for its hook has a shorter end, never one out of the concrete.
 */
function hookedLeg(x: number, way: 1 | -1, { top, landing, bottom }: Levels): ConvexSolid[] {
  const radius = diameter / 2
  const centre = bottom + radius + bend
  const gap = radius * Math.tan(Math.PI / chords / 2)
  const at = (turn: number) => [x, centre - bend * Math.sin(turn), way * bend * (1 - Math.cos(turn))] as const
  const pieces = Array.from({ length: chords }, (_, i) => [at((i * Math.PI) / chords), at(((i + 1) * Math.PI) / chords)] as const)
  const up = at(Math.PI)
  const end = Math.min(centre + tail, landing - diameter)
  const all = [[[x, top, 0] as const, at(0)] as const, ...pieces, [up, [x, end, up[2]] as const] as const]
  return all.map(([from, to], i) => {
    const length = Math.hypot(to[1] - from[1], to[2] - from[2])
    const start = i === 0 ? 0 : gap / length
    const stop = i === all.length - 1 ? 1 : 1 - gap / length
    const between = (share: number) => [x, from[1] + share * (to[1] - from[1]), from[2] + share * (to[2] - from[2])] as const
    return rod(between(start), between(stop), radius)
  })
}

/** Two plates outside the post on a seat that two reinforcing bars hold above the concrete; each ends in a standard hook down in it. */
export const barLegs = declareBracket({
  id: 'bar-legs',
  fields: plateSizes({ embedment: '12 in' }),
  parts: (bracket, site) => {
    const levels = { top: footOf(site) - bracket.plateThickness, landing: site.landing, bottom: site.landing - bracket.embedment }
    return [
      {
        id: 'bracket-legs',
        label: 'bracket-legs',
        role: 'steel',
        solids: [...hookedLeg(-legAt(site), 1, levels), ...hookedLeg(legAt(site), -1, levels)],
      },
      { id: 'bracket-seat', label: 'bracket-seat', role: 'steel', solids: [seatPlate(bracket, site)] },
      ...sidePlateParts(bracket, site),
    ]
  },
  landingRadius: (bracket, site) => metres(Math.hypot(site.postWidth / 2 + bracket.plateThickness, site.postDepth / 2)),
  bolts: 'side plates',
  anchorage: 'legs cast in',
  legs: { shape: 'bar', end: 'hook', size, grade: '60', count: 2, apart: (site) => metres(2 * legAt(site)) },
  steps: ['set-bracket-in-wet-concrete', 'check-bracket-level'],
  cautions: ['bracket-rating', 'gap-under-post'],
  sources: ['nds-2018-12-3-1', 'irc-r317-1-4', 'aci-318-19-25-4-3'],
})
