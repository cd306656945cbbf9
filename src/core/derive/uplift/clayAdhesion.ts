import { alphaConstant, clayAdhesionLength, clayTopExclusion, workedClayAdhesion } from '../../engineering/soil/alphaClay.ts'
import { atmosphere } from '../../engineering/soil/betaRational.ts'
import { upliftFactors, workedAllowableUplift } from '../../engineering/soil/upliftFactor.ts'
import { metres, newtons } from '../../units/quantity.ts'
import { type ChainLink, chainLink } from './chainLink.ts'
import { frictionPlusWeight } from './betaFriction.ts'
import type { SoilContext } from './soilContext.ts'

const base = { id: 'clay-adhesion-and-weight', group: 'uplift-soil' } as const

/**
 * Weight with adhesion in clay of a strength that the user gave; null elsewhere. The top 5 ft and one diameter over the bottom are left
 * out, which leaves most piers of a building with nothing: then the method says so and states no value.
 */
export function clayAdhesion({ frame, length, passed, counting, weight, factored }: SoilContext): ChainLink | null {
  if (!length || counting.counted === 'not counted') return null
  const { where, perimeter } = length
  const strengths = passed.map((values) => values.cohesion)
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
  if (counted <= 0) {
    return {
      ...base,
      allowable: null,
      counting: { counted: 'not counted', why: 'clay-exclusions-leave-nothing', sources: ['aashto-10-8-3-5'] },
      show: () => ({ where, worked: [weight] }),
    }
  }
  const ultimate = workedClayAdhesion(
    { alpha, strength, perimeter, length: metres(counted) },
    { standings: ['assumed here'], sources: ['user'] },
  )
  const allowable = workedAllowableUplift(
    { ultimate: newtons(ultimate.value), factor: upliftFactors.analysis.wind.value },
    { id: 'clay-adhesion-allowable', standings: [ultimate] },
  )
  return chainLink({
    ...base,
    counting: { counted: "engineer's judgement", why: 'adhesion-from-tested-clay', sources: ['ibc-1810-3-3-1-5'] },
    allowable: frictionPlusWeight(allowable, factored),
    show: () => ({ where, worked: [ultimate, allowable, weight, factored] }),
  })
}
