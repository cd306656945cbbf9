import { workedAlongRidge, workedFreeRoofLeeward, workedFreeRoofWindward } from '../../engineering/loads/freeRoof.ts'
import { directionality, rigidGust, workedFreeRoofPressure } from '../../engineering/loads/velocityPressure.ts'
import type { FreeRoofShape } from '../../engineering/tables/windRoof.ts'
import type { LoadEstimate } from '../../model/spec.ts'
import type { Worked } from '../../model/worked.ts'
import { pascals } from '../../units/quantity.ts'
import type { RoofWind } from './roofWind.ts'

const figures = ['A', 'B'] as const
/** Directions of wind that the figure of a shape tells apart. */
const directions: Readonly<Record<FreeRoofShape, readonly ('across' | 'on-high-eave' | 'on-low-eave')[]>> = {
  monoslope: ['on-high-eave', 'on-low-eave'],
  pitched: ['across'],
  troughed: ['across'],
}

/** Every case of a free roof: both load cases, each way across, and along the ridge in the bay that the wind meets first. Empty off the figure. */
export function freeRoofWind(estimate: LoadEstimate, shape: FreeRoofShape, velocityPressure: Worked): readonly RoofWind[] {
  const { edition, flow, roofAngle: angle } = estimate
  const pressure = (id: string, coefficient: Worked): Worked =>
    workedFreeRoofPressure(
      { edition, pressure: pascals(velocityPressure.value), gust: rigidGust, kd: directionality, coefficient: coefficient.value },
      { id, standings: [velocityPressure.standing, coefficient.standing] },
    )
  const across = directions[shape].flatMap((wind) =>
    figures.flatMap((loadCase): RoofWind[] => {
      const inputs = { shape, angle, flow, loadCase, windOn: wind === 'on-low-eave' ? 'low-eave' : 'high-eave' } as const
      // Which eave is meant was told from the signs of the figure, not from its sketch.
      const use = shape === 'monoslope' ? { standings: ['computed here' as const] } : {}
      const windward = workedFreeRoofWindward(inputs, use)
      const leeward = workedFreeRoofLeeward(inputs, use)
      if (!windward || !leeward) return []
      const halves = { windward: pressure('windward-pressure', windward), leeward: pressure('leeward-pressure', leeward) }
      return [{ wind, figure: loadCase, inside: null, ...halves, worked: [windward, leeward] }]
    }),
  )
  if (across.length === 0) return []
  const along = figures.map((loadCase): RoofWind => {
    const coefficient = workedAlongRidge({ flow, loadCase, distanceOverHeight: 0 })
    const even = pressure('windward-pressure', coefficient)
    return { wind: 'along', figure: loadCase, inside: null, windward: even, leeward: even, worked: [coefficient] }
  })
  return [...across, ...along]
}
