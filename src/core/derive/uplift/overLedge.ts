import { breakoutClay, breakoutFactorClay, workedBreakoutClay, workedBreakoutFactorClay } from '../../engineering/soil/breakoutClay.ts'
import { breakoutFactorSand, breakoutSand, workedBreakoutFactorSand, workedBreakoutSand } from '../../engineering/soil/breakoutSand.ts'
import { meetingDepth, workedMeetingDepth } from '../../engineering/soil/pierGroup.ts'
import { deadLoadShare, workedFactoredDeadLoad } from '../../engineering/soil/factoredDeadLoad.ts'
import {
  coneRule,
  soilCone,
  soilConeWithin,
  workedConeSoilWeight,
  workedSoilCone,
  workedSoilConeWithin,
} from '../../engineering/soil/soilCone.ts'
import { allowableUplift, upliftFactors, workedAllowableUplift } from '../../engineering/soil/upliftFactor.ts'
import { weakest } from '../../engineering/showing.ts'
import type { Counting } from '../../model/kind.ts'
import type { Check, Worked } from '../../model/worked.ts'
import { cubicMetres, type Metres, metres, newtons, type Radians, radians, squareMetres, type UnitWeight } from '../../units/quantity.ts'
import { makeCheck } from '../check.ts'
import { factoredWeight } from './frictionAndWeight.ts'
import { type Hold, hold } from './hold.ts'
import { type Ledge, ledgeOf } from './ledge.ts'
import type { SoilColumn } from './soilColumn.ts'
import type { SoilContext, SoilFigures, SoilSite } from './soilContext.ts'

/** Friction angles beyond this are not credible in a hole that an auger has loosened [rad]. Source: meyerhof-adams-1968, as the reference reads it. */
const credibleAngle = radians((35 * Math.PI) / 180)

const judged = (why: string): Counting => ({ counted: "engineer's judgement", why, sources: ['go-95'] })

/** The ledge that a pier lifts soil with; null without one, or for a pier that may not be counted. */
function liftingLedge({ frame, counting }: SoilSite): Ledge | null {
  const ledge = ledgeOf(frame)
  return ledge && ledge.depth > 0 && counting.counted !== 'not counted' ? ledge : null
}

/** What goes into the weight of the cone; its soil at the lighter of the rule's weight and the ground's own, buoyant below water. */
function coneProblem(ledge: Ledge, column: SoilColumn, spacing: Metres | null) {
  const cone = { radius: ledge.radius, height: ledge.depth, angle: coneRule.angle.value }
  const whole = soilCone(cone)
  // Cones of two piers that meet share their soil: neither takes more than half the way.
  const within = spacing !== null && whole.topRadius > spacing / 2 ? { ...cone, reach: metres(spacing / 2) } : null
  const soil = Math.min(coneRule.earth.value, column.stress(ledge.depth) / ledge.depth) as UnitWeight
  const shaft = cubicMetres(Math.PI * ledge.above ** 2 * ledge.depth)
  return { cone, within, weight: { cone: within ? soilConeWithin(within) : whole.volume, shaft, soil } }
}

/** Weight of the soil in a cone over the ledge and of the pier, each once, times 0.6; null without a ledge or a pier that is counted. */
export function coneOverLedge(context: SoilContext): Check | null {
  const { column, weight } = context
  const ledge = liftingLedge(context)
  if (!ledge) return null
  const problem = coneProblem(ledge, column, context.frame.spec.spacing)
  const cone = problem.within ? workedSoilConeWithin(problem.within) : workedSoilCone(problem.cone)
  const soil = workedConeSoilWeight(problem.weight, { standings: [cone.standing], sources: cone.sources })
  const total: Worked = {
    id: 'cone-and-pier-weight',
    value: soil.value + weight.value,
    quantity: 'weight',
    formula: 'D = W_{cone} + W_{pier}',
    inputs: [
      { symbol: 'W_{cone}', name: 'soil', value: soil.value, quantity: 'weight' },
      { symbol: 'W_{pier}', name: 'pier', value: weight.value, quantity: 'weight' },
    ],
    sources: [...new Set([...soil.sources, ...weight.sources])],
    standing: weakest(soil.standing, weight.standing),
  }
  const allowable = workedFactoredDeadLoad(
    { weight: newtons(total.value), share: deadLoadShare.value },
    { id: 'allowable-soil-uplift', standings: [total.standing] },
  )
  return makeCheck({
    id: 'cone-over-ledge',
    group: 'uplift-soil',
    where: ledge.where,
    worked: [cone, soil, total],
    allowable,
    counting: judged(`cone-over-${ledge.kind}`),
  })
}

/** The same as a bare number. */
export function coneOverLedgeHold(figures: SoilFigures): Hold | null {
  const ledge = liftingLedge(figures)
  if (!ledge) return null
  const soil = workedConeSoilWeight.recipe.of(coneProblem(ledge, figures.column, figures.frame.spec.spacing).weight)
  return hold('cone-over-ledge', 'uplift-soil', "engineer's judgement", factoredWeight(soil + figures.weight))
}

/** Where two neighbours would lift the same ground: what says how deep that begins; null where they do not. */
function meeting(ledge: Ledge, spacing: Metres | null) {
  const spread = Math.tan(coneRule.angle.value)
  const apart = spacing !== null && { reach: metres(spacing / 2), radius: ledge.radius, spread }
  return apart && meetingDepth(apart) < ledge.depth ? apart : null
}

/**
 * What goes into breakout in clay of a given strength, or in sand; null where there is neither. Beside a neighbour the factor is that of
 * the depth at which the ground of the two would meet: no ground is lifted twice.
 */
function breakoutProblem(ledge: Ledge, column: SoilColumn, spacing: Metres | null) {
  const shared = meeting(ledge, spacing)
  const depth = shared ? meetingDepth(shared) : ledge.depth
  const values = column.at(ledge.depth / 2)
  const width = metres(2 * ledge.radius)
  const area = squareMetres(Math.PI * ledge.radius ** 2)
  const unitWeight = (column.stress(ledge.depth) / ledge.depth) as UnitWeight
  const plate = { area, unitWeight, depth: ledge.depth }
  if (values.cohesion !== null && values.cohesion > 0) {
    const fc = breakoutFactorClay({ depth, width, strip: false })
    return {
      in: 'clay',
      shared,
      standing: values.strengthStanding,
      factor: { depth, width, strip: false },
      inputs: { ...plate, strength: values.cohesion, fc },
    } as const
  }
  if (values.frictionAngle === null) return null
  const frictionAngle = Math.min(values.frictionAngle, credibleAngle) as Radians
  const factor = { width, length: width, depth, frictionAngle, round: true }
  const found = breakoutFactorSand(factor)
  return found && ({ in: 'sand', shared, standing: values.strengthStanding, factor, inputs: { ...plate, fq: found.fq } } as const)
}

const windFactor = upliftFactors.analysis.wind.value

/** Breakout of the enlarged base, soil and pier already inside, with the factor for wind; null without a ledge. */
export function breakoutOfLedge(context: SoilContext): Check | null {
  const ledge = liftingLedge(context)
  const problem = ledge && breakoutProblem(ledge, context.column, context.frame.spec.spacing)
  if (!ledge || !problem) return null
  const finish = (worked: readonly Worked[], ultimate: Worked, why: string) => {
    const allowable = workedAllowableUplift(
      { ultimate: newtons(ultimate.value), factor: windFactor },
      { id: 'allowable-soil-uplift', standings: [ultimate.standing], sources: ultimate.sources },
    )
    return makeCheck({
      id: 'breakout-of-ledge',
      group: 'uplift-soil',
      where: ledge.where,
      worked: [...(problem.shared ? [workedMeetingDepth(problem.shared)] : []), ...worked, ultimate],
      allowable,
      counting: { ...judged(problem.shared ? `${why}-shared` : why), sources: ['meyerhof-adams-1968', 'ibc-1810-3-3-1-5'] },
    })
  }
  const standings = [problem.standing]
  if (problem.in === 'clay')
    return finish(
      [workedBreakoutFactorClay(problem.factor)],
      workedBreakoutClay(problem.inputs, { standings, sources: ['user'] }),
      'breakout-in-clay',
    )
  const shown = workedBreakoutFactorSand(problem.factor, { standings })
  return shown && finish([shown], workedBreakoutSand(problem.inputs, { standings: [shown.standing] }), 'breakout-in-sand')
}

/** The same as a bare number. */
export function breakoutOfLedgeHold(figures: SoilFigures): Hold | null {
  const ledge = liftingLedge(figures)
  const problem = ledge && breakoutProblem(ledge, figures.column, figures.frame.spec.spacing)
  if (!problem) return null
  const ultimate = newtons(problem.in === 'clay' ? breakoutClay(problem.inputs) : breakoutSand(problem.inputs))
  return hold('breakout-of-ledge', 'uplift-soil', "engineer's judgement", allowableUplift({ ultimate, factor: windFactor }))
}
