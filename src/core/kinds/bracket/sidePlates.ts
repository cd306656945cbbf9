import { box } from '../../geometry/placed.ts'
import { toSI } from '../../units/factors.ts'
import { metres } from '../../units/quantity.ts'
import { declareBracket } from '../record.ts'
import { footOf, halfAlong, plateSizes, seatPlate, sidePlateParts } from './plateParts.ts'

const inch = (value: number) => toSI(value, 'in')

/** Two plates outside the post on a seat that two flat legs hold above the concrete; the legs run down into it. */
export const sidePlates = declareBracket({
  id: 'side-plates',
  fields: plateSizes({ embedment: '12 in' }),
  parts: (bracket, site) => {
    const t = bracket.plateThickness
    const foot = footOf(site)
    const legHalf = Math.min(inch(1), halfAlong(site))
    const legX = site.postWidth / 4
    const bottom = site.landing - bracket.embedment
    const leg = (sign: number) => box([sign * legX, (foot - t + bottom) / 2, 0], [t / 2, (foot - t - bottom) / 2, legHalf])
    const foots = (sign: number) => box([sign * (legX + t / 2 + inch(0.75)), bottom + t / 2, 0], [inch(0.75), t / 2, legHalf])
    return [
      { id: 'bracket-legs', label: 'bracket-legs', role: 'steel', solids: [leg(-1), leg(1), foots(-1), foots(1)] },
      { id: 'bracket-seat', label: 'bracket-seat', role: 'steel', solids: [seatPlate(bracket, site)] },
      ...sidePlateParts(bracket, site),
    ]
  },
  landingRadius: (bracket, site) => metres(Math.hypot(site.postWidth / 2 + bracket.plateThickness, site.postDepth / 2)),
  bolts: 'side plates',
  anchorage: 'legs cast in',
  legs: { shape: 'flat' },
  steps: ['set-bracket-in-wet-concrete', 'check-bracket-level'],
  cautions: ['bracket-rating', 'gap-under-post'],
  sources: ['nds-2018-12-3-1', 'irc-r317-1-4'],
})
