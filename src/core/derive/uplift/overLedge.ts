import { breakoutFactorClay, workedBreakoutClay } from '../../engineering/soil/breakoutClay.ts'
import { breakoutFactorSand, workedBreakoutFactorSand, workedBreakoutSand } from '../../engineering/soil/breakoutSand.ts'
import { deadLoadShare, workedFactoredDeadLoad } from '../../engineering/soil/factoredDeadLoad.ts'
import { coneRule, soilCone, workedConeSoilWeight, workedSoilCone } from '../../engineering/soil/soilCone.ts'
import { upliftFactors, workedAllowableUplift } from '../../engineering/soil/upliftFactor.ts'
import { weakest } from '../../engineering/showing.ts'
import type { Counting } from '../../model/kind.ts'
import type { Check, Worked } from '../../model/worked.ts'
import { cubicMetres, metres, newtons, type Radians, radians, squareMetres, type UnitWeight } from '../../units/quantity.ts'
import { makeCheck } from '../check.ts'
import { ledgeOf } from './ledge.ts'
import type { SoilContext } from './soilContext.ts'

/** Friction angles beyond this are not credible in a hole that an auger has loosened [rad]. Source: meyerhof-adams-1968, as the reference reads it. */
const credibleAngle = radians((35 * Math.PI) / 180)

const judged = (why: string): Counting => ({ counted: "engineer's judgement", why, sources: ['go-95'] })

/** Weight of the soil in a cone over the ledge and of the pier, each once, times 0.6; null without a ledge or a pier that is counted. */
export function coneOverLedge(context: SoilContext): Check | null {
  const { frame, column, weight, counting } = context
  const ledge = ledgeOf(frame)
  if (!ledge || ledge.depth <= 0 || counting.counted === 'not counted') return null
  const { volume } = soilCone({ radius: ledge.radius, height: ledge.depth, angle: coneRule.angle.value })
  const cone = workedSoilCone({ radius: ledge.radius, height: ledge.depth, angle: coneRule.angle.value })
  const mean = column.stress(ledge.depth) / ledge.depth
  const unit = Math.min(coneRule.earth.value, mean) as UnitWeight
  const shaft = cubicMetres(Math.PI * ledge.above ** 2 * ledge.depth)
  const soil = workedConeSoilWeight({ cone: volume, shaft, soil: unit }, { standings: [cone.standing], sources: cone.sources })
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

/** Breakout of the enlarged base, soil and pier already inside, with the factor for wind; null without a ledge. */
export function breakoutOfLedge({ frame, column, counting }: SoilContext): Check | null {
  const ledge = ledgeOf(frame)
  if (!ledge || ledge.depth <= 0 || counting.counted === 'not counted') return null
  const values = column.at(ledge.depth / 2)
  const width = metres(2 * ledge.radius)
  const area = squareMetres(Math.PI * ledge.radius ** 2)
  const unitWeight = (column.stress(ledge.depth) / ledge.depth) as UnitWeight
  const standings = [values.strengthStanding]
  const base = { id: 'breakout-of-ledge', group: 'uplift-soil', where: ledge.where } as const
  const finish = (worked: readonly Worked[], ultimate: Worked, why: string) => {
    const allowable = workedAllowableUplift(
      { ultimate: newtons(ultimate.value), factor: upliftFactors.analysis.wind.value },
      { id: 'allowable-soil-uplift', standings: [ultimate.standing], sources: ultimate.sources },
    )
    return makeCheck({
      ...base,
      worked: [...worked, ultimate],
      allowable,
      counting: { ...judged(why), sources: ['meyerhof-adams-1968', 'ibc-1810-3-3-1-5'] },
    })
  }
  if (values.cohesion !== null && values.cohesion > 0) {
    const fc = breakoutFactorClay({ depth: ledge.depth, width, strip: false })
    return finish(
      [],
      workedBreakoutClay({ area, unitWeight, depth: ledge.depth, strength: values.cohesion, fc }, { standings, sources: ['user'] }),
      'breakout-in-clay',
    )
  }
  if (values.frictionAngle === null) return null
  const frictionAngle = Math.min(values.frictionAngle, credibleAngle) as Radians
  const inputs = { width, length: width, depth: ledge.depth, frictionAngle, round: true }
  const factor = breakoutFactorSand(inputs)
  const shown = workedBreakoutFactorSand(inputs, { standings })
  if (!factor || !shown) return null
  return finish(
    [shown],
    workedBreakoutSand({ fq: factor.fq, unitWeight, area, depth: ledge.depth }, { standings: [shown.standing] }),
    'breakout-in-sand',
  )
}
