import { box, rod } from '../../geometry/placed.ts'
import type { BracketKind } from '../../model/kind.ts'
import { toSI } from '../../units/factors.ts'
import { metres } from '../../units/quantity.ts'
import { boltEnds, boltRow, plateHeight } from './boltPattern.ts'
import { bracketSizes } from './bracketFields.ts'

const inch = (value: number) => toSI(value, 'in')
const anchors = [
  [1, 1],
  [1, -1],
  [-1, -1],
  [-1, 1],
] as const

/** A plate on the cured concrete with four anchors, two short webs up to the seat, and side plates with bolts. */
export const basePlate: BracketKind = {
  id: 'base-plate',
  fields: bracketSizes,
  defaults: {
    kind: 'base-plate',
    plateThickness: metres(inch(0.25)),
    boltDiameter: metres(inch(0.625)),
    boltCount: 2,
    embedment: metres(inch(6)),
    rating: null,
  },
  parts: (bracket, site) => {
    const t = bracket.plateThickness
    const foot = site.landing + site.standOff
    const halfDepth = 0.42 * site.postDepth
    const side = site.postWidth / 2 + t / 2
    const rise = plateHeight(bracket)
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
          box([0, foot - t / 2, 0], [site.postWidth / 2 + t, t / 2, halfDepth]),
          ...[-1, 1].map((sign) => box([sign * 0.3 * site.postWidth, site.landing + t + webHalf, 0], [t / 2, webHalf, 0.8 * halfDepth])),
        ],
      },
      {
        id: 'bracket-plates',
        label: 'side-plates',
        role: 'steel',
        solids: [-1, 1].map((sign) => box([sign * side, foot + rise / 2, 0], [t / 2, rise / 2, halfDepth])),
      },
      {
        id: 'bolts',
        label: 'bolts',
        role: 'steel',
        solids: [...boltRow(bracket, site, site.postWidth / 2 + t), ...boltEnds(bracket, site, site.postWidth / 2 + t)],
      },
    ]
  },
  landingRadius: (_bracket, site) => metres(Math.hypot(site.postWidth / 2 + inch(1.25), site.postDepth / 2)),
  bolts: 'side plates',
  anchorage: 'anchored after curing',
  legs: null,
  steps: ['cure', 'drill-and-clean-anchor-holes', 'set-anchors', 'check-bracket-level'],
  cautions: ['bracket-rating', 'anchors-need-evaluation', 'gap-under-post'],
  sources: ['nds-2018-12-3-1', 'irc-r317-1-4'],
}
