import { box } from '../../geometry/placed.ts'
import { toSI } from '../../units/factors.ts'
import { metres } from '../../units/quantity.ts'
import { declareBracket } from '../record.ts'
import { boltRow, footOf, plateHeight, plateSizes } from './plateParts.ts'

const inch = (value: number) => toSI(value, 'in')

/** One upright plate in a slot in the post, on a seat; the plate itself runs down into the concrete to a foot. */
export const knifePlate = declareBracket({
  id: 'knife-plate',
  fields: plateSizes({ bolt: '0.5 in', embedment: '12 in' }),
  parts: (bracket, site) => {
    const t = bracket.plateThickness
    const foot = footOf(site)
    const half = 0.36 * site.postDepth
    const bottom = site.landing - bracket.embedment
    const rise = plateHeight(bracket)
    return [
      {
        id: 'bracket-legs',
        label: 'bracket-legs',
        role: 'steel',
        solids: [
          box([0, (foot - t + bottom) / 2, 0], [t / 2, (foot - t - bottom) / 2, half]),
          box([0, bottom - t / 2, 0], [inch(1.25), t / 2, half]),
        ],
      },
      {
        id: 'bracket-seat',
        label: 'bracket-seat',
        role: 'steel',
        solids: [box([0, foot - t / 2, 0], [0.46 * site.postWidth, t / 2, 0.46 * site.postDepth])],
      },
      { id: 'bracket-plates', label: 'knife-plate', role: 'steel', solids: [box([0, foot + rise / 2, 0], [t / 2, rise / 2, half])] },
      { id: 'bolts', label: 'bolts', role: 'steel', solids: boltRow(bracket, site, 0.46 * site.postWidth) },
    ]
  },
  landingRadius: (_bracket, site) => metres(Math.hypot(site.postWidth / 2, site.postDepth / 2)),
  bolts: 'knife plate',
  anchorage: 'legs cast in',
  legs: { shape: 'flat' },
  steps: ['set-bracket-in-wet-concrete', 'check-bracket-level', 'slot-and-treat-post-end'],
  cautions: ['bracket-rating', 'gap-under-post', 'slot-needs-treatment'],
  sources: ['nds-2018-12-3-1', 'irc-r317-1-4'],
})
