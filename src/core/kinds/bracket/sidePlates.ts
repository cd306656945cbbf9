import { box } from '../../geometry/placed.ts'
import type { BracketKind } from '../../model/kind.ts'
import { toSI } from '../../units/factors.ts'
import { metres } from '../../units/quantity.ts'
import { boltEnds, boltRow, plateHeight } from './boltPattern.ts'
import { bracketSizes } from './bracketFields.ts'

const inch = (value: number) => toSI(value, 'in')

/** Two plates outside the post on a seat that two flat legs hold above the concrete; the legs run down into it. */
export const sidePlates: BracketKind = {
  id: 'side-plates',
  fields: bracketSizes,
  defaults: {
    kind: 'side-plates',
    plateThickness: metres(inch(0.25)),
    boltDiameter: metres(inch(0.625)),
    boltCount: 2,
    embedment: metres(inch(12)),
    rating: null,
  },
  parts: (bracket, site) => {
    const t = bracket.plateThickness
    const foot = site.landing + site.standOff
    const halfDepth = 0.42 * site.postDepth
    const side = site.postWidth / 2 + t / 2
    const rise = plateHeight(bracket)
    const plate = (sign: number) => box([sign * side, foot + rise / 2, 0], [t / 2, rise / 2, halfDepth])
    const legHalf = Math.min(inch(1), halfDepth)
    const legX = site.postWidth / 4
    const bottom = site.landing - bracket.embedment
    const leg = (sign: number) => box([sign * legX, (foot - t + bottom) / 2, 0], [t / 2, (foot - t - bottom) / 2, legHalf])
    const foots = (sign: number) => box([sign * (legX + t / 2 + inch(0.75)), bottom + t / 2, 0], [inch(0.75), t / 2, legHalf])
    return [
      { id: 'bracket-legs', label: 'bracket-legs', role: 'steel', solids: [leg(-1), leg(1), foots(-1), foots(1)] },
      {
        id: 'bracket-seat',
        label: 'bracket-seat',
        role: 'steel',
        solids: [box([0, foot - t / 2, 0], [site.postWidth / 2 + t, t / 2, halfDepth])],
      },
      { id: 'bracket-plates', label: 'side-plates', role: 'steel', solids: [plate(-1), plate(1)] },
      {
        id: 'bolts',
        label: 'bolts',
        role: 'steel',
        solids: [...boltRow(bracket, site, site.postWidth / 2 + t), ...boltEnds(bracket, site, site.postWidth / 2 + t)],
      },
    ]
  },
  landingRadius: (bracket, site) => metres(Math.hypot(site.postWidth / 2 + bracket.plateThickness, site.postDepth / 2)),
  bolts: 'side plates',
  anchorage: 'legs cast in',
  legs: { shape: 'flat' },
  steps: ['set-bracket-in-wet-concrete', 'check-bracket-level'],
  cautions: ['bracket-rating', 'gap-under-post'],
  sources: ['nds-2018-12-3-1', 'irc-r317-1-4'],
}
