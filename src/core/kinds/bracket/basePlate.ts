import { box, rod } from '../../geometry/placed.ts'
import { toSI } from '../../units/factors.ts'
import { metres } from '../../units/quantity.ts'
import { declareBracket } from '../record.ts'
import { halfAlong, plateSizes, seatPlate, sidePlateParts } from './plateParts.ts'

const inch = (value: number) => toSI(value, 'in')
const anchors = [
  [1, 1],
  [1, -1],
  [-1, -1],
  [-1, 1],
] as const

/** A plate on the cured concrete with four anchors, two short webs up to the seat, and side plates with bolts. */
export const basePlate = declareBracket({
  id: 'base-plate',
  fields: plateSizes({ embedment: '6 in' }),
  parts: (bracket, site) => {
    const t = bracket.plateThickness
    const reachX = site.postWidth / 2 + inch(1.25)
    const reachZ = site.postDepth / 2
    const radius = bracket.boltDiameter / 2
    const anchorAt = ([sx, sz]: readonly [number, number]) => [sx * (reachX - inch(0.7)), sz * (reachZ - inch(0.7))] as const
    const webHalf = Math.max((site.standOff - 2 * t) / 2, 0.0005)
    return [
      {
        id: 'anchors',
        label: 'anchors',
        role: 'steel',
        solids: anchors.map((a) => {
          const [x, z] = anchorAt(a)
          return rod([x, site.landing - bracket.embedment, z], [x, site.landing + t + 1.6 * bracket.boltDiameter, z], radius)
        }),
      },
      { id: 'bracket-base', label: 'bracket-base', role: 'steel', solids: [box([0, site.landing + t / 2, 0], [reachX, t / 2, reachZ])] },
      {
        id: 'bracket-seat',
        label: 'bracket-seat',
        role: 'steel',
        solids: [
          seatPlate(bracket, site),
          ...[-1, 1].map((sign) =>
            box([sign * 0.3 * site.postWidth, site.landing + t + webHalf, 0], [t / 2, webHalf, 0.8 * halfAlong(site)]),
          ),
        ],
      },
      ...sidePlateParts(bracket, site),
    ]
  },
  landingRadius: (_bracket, site) => metres(Math.hypot(site.postWidth / 2 + inch(1.25), site.postDepth / 2)),
  bolts: 'side plates',
  anchorage: 'anchored after curing',
  legs: null,
  steps: ['cure', 'drill-and-clean-anchor-holes', 'set-anchors', 'check-bracket-level'],
  cautions: ['bracket-rating', 'anchors-need-evaluation', 'gap-under-post'],
  sources: ['nds-2018-12-3-1', 'irc-r317-1-4'],
})
