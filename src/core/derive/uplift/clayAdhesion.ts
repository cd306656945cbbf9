import { alphaConstant, clayAdhesionLength, clayTopExclusion, workedClayAdhesion } from '../../engineering/soil/alphaClay.ts'
import { atmosphere } from '../../engineering/soil/betaRational.ts'
import { upliftFactors, workedAllowableUplift } from '../../engineering/soil/upliftFactor.ts'
import type { Check } from '../../model/worked.ts'
import { metres, newtons } from '../../units/quantity.ts'
import { makeCheck } from '../check.ts'
import { frictionPlusWeight } from './combine.ts'
import type { SoilContext } from './soilContext.ts'
import { soilsBetween } from './soilColumn.ts'

/**
 * Weight with adhesion in clay of a strength that the user gave; null elsewhere. The top 5 ft and one diameter over the bottom are left
 * out, which leaves most piers of a building with nothing: then the method says so and states no value.
 */
export function clayAdhesion({ frame, column, length, weight, factored, counting }: SoilContext): Check | null {
  if (!length || counting.counted === 'not counted') return null
  const strengths = soilsBetween(column, length).map((values) => values.cohesion)
  const strength = strengths.reduce((least, one) => (one !== null && (least === null || one < least) ? one : least), null)
  if (strength === null || strength <= 0 || strengths.some((one) => one === null || one <= 0)) return null
  const alpha = alphaConstant({ strength, atmosphere: atmosphere.value })
  if (alpha === null) return null
  const counted = clayAdhesionLength({
    top: length.from,
    bottom: length.to,
    topExclusion: clayTopExclusion.value,
    diameter: frame.spec.hole.diameter,
  })
  const base = { id: 'clay-adhesion-and-weight', group: 'uplift-soil', where: length.where } as const
  if (counted <= 0) {
    return makeCheck({
      ...base,
      worked: [weight],
      allowable: null,
      counting: { counted: 'not counted', why: 'clay-exclusions-leave-nothing', sources: ['aashto-10-8-3-5'] },
    })
  }
  const ultimate = workedClayAdhesion(
    { alpha, strength, perimeter: length.perimeter, length: metres(counted) },
    { standings: ['assumed here'], sources: ['user'] },
  )
  const allowable = workedAllowableUplift(
    { ultimate: newtons(ultimate.value), factor: upliftFactors.analysis.wind.value },
    { id: 'clay-adhesion-allowable', standings: [ultimate.standing] },
  )
  return makeCheck({
    ...base,
    worked: [ultimate, allowable, weight, factored],
    allowable: frictionPlusWeight(allowable, factored),
    counting: { counted: "engineer's judgement", why: 'adhesion-from-tested-clay', sources: ['ibc-1810-3-3-1-5'] },
  })
}
