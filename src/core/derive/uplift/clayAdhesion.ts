import { alphaConstant, clayAdhesionLength, clayTopExclusion, workedClayAdhesion } from '../../engineering/soil/alphaClay.ts'
import { atmosphere } from '../../engineering/soil/betaRational.ts'
import { allowableUplift, upliftFactors, workedAllowableUplift } from '../../engineering/soil/upliftFactor.ts'
import type { Check } from '../../model/worked.ts'
import { metres, newtons } from '../../units/quantity.ts'
import { makeCheck } from '../check.ts'
import { frictionPlusWeight } from './combine.ts'
import { factoredWeight } from './frictionAndWeight.ts'
import { type Hold, hold } from './hold.ts'
import type { SoilContext, SoilFigures, SoilSite } from './soilContext.ts'

/** What goes into adhesion in clay, with the length that is left of it [m]; null where not every soil passed is clay of a given strength. */
function adhesionProblem({ frame, length, passed, counting }: SoilSite) {
  if (!length || counting.counted === 'not counted') return null
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
  return { alpha, strength, perimeter: length.perimeter, length: metres(counted), where: length.where }
}

const base = { id: 'clay-adhesion-and-weight', group: 'uplift-soil' } as const
const factor = upliftFactors.analysis.wind.value

/**
 * Weight with adhesion in clay of a strength that the user gave; null elsewhere. The top 5 ft and one diameter over the bottom are left
 * out, which leaves most piers of a building with nothing: then the method says so and states no value.
 */
export function clayAdhesion(context: SoilContext): Check | null {
  const { weight, factored } = context
  const problem = adhesionProblem(context)
  if (!problem) return null
  const { where, ...inputs } = problem
  if (inputs.length <= 0) {
    return makeCheck({
      ...base,
      where,
      worked: [weight],
      allowable: null,
      counting: { counted: 'not counted', why: 'clay-exclusions-leave-nothing', sources: ['aashto-10-8-3-5'] },
    })
  }
  const ultimate = workedClayAdhesion(inputs, { standings: ['assumed here'], sources: ['user'] })
  const allowable = workedAllowableUplift(
    { ultimate: newtons(ultimate.value), factor },
    { id: 'clay-adhesion-allowable', standings: [ultimate.standing] },
  )
  return makeCheck({
    ...base,
    where,
    worked: [ultimate, allowable, weight, factored],
    allowable: frictionPlusWeight(allowable, factored),
    counting: { counted: "engineer's judgement", why: 'adhesion-from-tested-clay', sources: ['ibc-1810-3-3-1-5'] },
  })
}

/** The same as a bare number. */
export function clayAdhesionHold(figures: SoilFigures): Hold | null {
  const problem = adhesionProblem(figures)
  if (!problem) return null
  if (problem.length <= 0) return hold(base.id, base.group, 'not counted', null)
  const ultimate = newtons(workedClayAdhesion.recipe.of(problem))
  return hold(base.id, base.group, "engineer's judgement", allowableUplift({ ultimate, factor }) + factoredWeight(figures.weight))
}
