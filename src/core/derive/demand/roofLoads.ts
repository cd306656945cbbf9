import { workedTributaryLoad } from '../../engineering/loads/roofReactions.ts'
import { snowFactors, workedFlatRoofSnow } from '../../engineering/loads/snow.ts'
import { toSI } from '../../units/factors.ts'
import type { LoadEstimate } from '../../model/spec.ts'
import type { Worked } from '../../model/worked.ts'
import { type Pascals, pascals } from '../../units/quantity.ts'

/** Roofs flatter than this have a least snow load [rad]. Source: asce-7-16-7. */
const lowSlope = toSI(15, 'deg')

/** Dead load, roof live load and snow at one post, down positive, and the snow on the roof that the last comes from. */
export function roofLoads(estimate: LoadEstimate): Readonly<{ dead: Worked; roofLive: Worked; snow: Worked; worked: readonly Worked[] }> {
  const { span, bay, overhang, deadLoad, roofLive, groundSnow, roofAngle } = estimate
  const atPost = (id: string, pressure: Pascals, from?: Worked): Worked =>
    workedTributaryLoad({ span, bay, overhang, pressure }, { id, ...(from ? { standings: [from.standing], sources: from.sources } : {}) })
  // Open or unheated, partly sheltered, importance 1; a roof of any slope keeps the flat roof's load.
  const roofSnow = workedFlatRoofSnow({
    ground: groundSnow,
    exposure: snowFactors.exposure.partial.value,
    thermal: snowFactors.thermal.openOrUnheated.value,
    importance: 1,
    lowSlope: roofAngle < lowSlope,
  })
  const dead = atPost('dead-at-post', deadLoad)
  const live = atPost('roof-live-at-post', roofLive)
  const snow = atPost('snow-at-post', pascals(roofSnow.value), roofSnow)
  return { dead, roofLive: live, snow, worked: [dead, live, roofSnow, snow] }
}
