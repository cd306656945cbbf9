import type { ReasonId } from '../../model/saidIds.ts'
import { workedBreakoutClay, workedBreakoutFactorClay } from '../../engineering/soil/breakoutClay.ts'
import { workedBreakoutFactorSand, workedBreakoutSand } from '../../engineering/soil/breakoutSand.ts'
import { meetingDepth, workedMeetingDepth } from '../../engineering/soil/pierGroup.ts'
import { deadLoadShare, workedFactoredDeadLoad } from '../../engineering/soil/factoredDeadLoad.ts'
import { coneRule, soilCone, workedConeSoilWeight, workedSoilCone, workedSoilConeWithin } from '../../engineering/soil/soilCone.ts'
import { upliftFactors, workedAllowableUplift } from '../../engineering/soil/upliftFactor.ts'
import { weakest, worked } from '../../engineering/showing.ts'
import type { Counting } from '../../model/kind.ts'
import type { Worked } from '../../model/worked.ts'
import { cubicMetres, type Metres, metres, newtons, type Radians, radians, squareMetres, type UnitWeight } from '../../units/quantity.ts'
import { type ChainLink, chainLink } from './chainLink.ts'
import type { Ledge } from './ledge.ts'
import type { SoilColumn } from './soilColumn.ts'
import type { SoilContext } from './soilContext.ts'

const group = 'uplift-soil'
/** Friction angles beyond this are not credible in a hole that an auger has loosened [rad]. Source: meyerhof-adams-1968, as the reference reads it. */
const credibleAngle = radians((35 * Math.PI) / 180)

const judged = (why: ReasonId): Counting => ({ counted: "engineer's judgement", why, sources: ['go-95'] })

/** The ledge that a pier lifts soil with; null without one, or for a pier that may not be counted. */
function liftingLedge({ ledge, counting }: SoilContext): Ledge | null {
  return ledge && ledge.depth > 0 && counting.counted !== 'not counted' ? ledge : null
}

/** Soil in the cone over a ledge. Cones of two piers that meet share their soil: neither takes more than half the way. */
function coneOver({ radius, depth }: Ledge, spacing: Metres | null): Worked {
  const cone = { radius, height: depth, angle: coneRule.angle.value }
  const isShared = spacing !== null && soilCone(cone).topRadius > spacing / 2
  return isShared ? workedSoilConeWithin({ ...cone, reach: metres(spacing / 2) }) : workedSoilCone(cone)
}

/** Weight of the soil in a cone over the ledge and of the pier, each once, times 0.6; null without a ledge or a pier that is counted. */
export function coneOverLedge(context: SoilContext): ChainLink | null {
  const { column, weight } = context
  const ledge = liftingLedge(context)
  if (!ledge) return null
  const cone = coneOver(ledge, context.frame.spec.spacing)
  const soil = workedConeSoilWeight(
    {
      cone: cubicMetres(cone.value),
      shaft: cubicMetres(Math.PI * ledge.above ** 2 * ledge.depth),
      // The lighter of the rule's weight and the ground's own, buoyant below water.
      soil: Math.min(coneRule.earth.value, column.stress(ledge.depth) / ledge.depth) as UnitWeight,
    },
    { standings: [cone], sources: [cone] },
  )
  const total = worked('cone-and-pier-weight', soil.value + weight.value, 'weight', () => ({
    formula: 'D = W_{cone} + W_{pier}',
    inputs: [
      { symbol: 'W_{cone}', name: 'soil', value: soil.value, quantity: 'weight' },
      { symbol: 'W_{pier}', name: 'pier', value: weight.value, quantity: 'weight' },
    ],
    sources: [...new Set([...soil.sources, ...weight.sources])],
    standing: weakest(soil.standing, weight.standing),
  }))
  return chainLink({
    id: 'cone-over-ledge',
    group,
    overBell: ledge.kind === 'bell',
    counting: judged(`cone-over-${ledge.kind}`),
    allowable: workedFactoredDeadLoad(
      { weight: newtons(total.value), share: deadLoadShare.value },
      { id: 'allowable-soil-uplift', standings: [total] },
    ),
    show: () => ({ where: ledge.where, worked: [cone, soil, total] }),
  })
}

/** Where two neighbours would lift the same ground: what says how deep that begins; null where they do not. */
function meeting(ledge: Ledge, spacing: Metres | null) {
  const spread = Math.tan(coneRule.angle.value)
  const apart = spacing !== null && { reach: metres(spacing / 2), radius: ledge.radius, spread }
  return apart && meetingDepth(apart) < ledge.depth ? apart : null
}

/** Breakout in clay of a given strength, or in sand, with the factor that it takes at a depth; null where there is neither. */
function ultimateBreakout(
  ledge: Ledge,
  column: SoilColumn,
  depth: Metres,
): Readonly<{ factor: Worked; ultimate: Worked; why: 'breakout-in-clay' | 'breakout-in-sand' }> | null {
  const { cohesion, frictionAngle, strengthStanding: standing } = column.at(ledge.depth / 2)
  const width = metres(2 * ledge.radius)
  const plate = {
    area: squareMetres(Math.PI * ledge.radius ** 2),
    unitWeight: (column.stress(ledge.depth) / ledge.depth) as UnitWeight,
    depth: ledge.depth,
  }
  if (cohesion !== null && cohesion > 0) {
    const factor = workedBreakoutFactorClay({ depth, width, strip: false })
    const use = { standings: [standing], sources: ['user'] } as const
    return { factor, ultimate: workedBreakoutClay({ ...plate, strength: cohesion, fc: factor.value }, use), why: 'breakout-in-clay' }
  }
  if (frictionAngle === null) return null
  const angle = Math.min(frictionAngle, credibleAngle) as Radians
  const factor = workedBreakoutFactorSand({ width, length: width, depth, frictionAngle: angle, round: true }, { standings: [standing] })
  return (
    factor && { factor, ultimate: workedBreakoutSand({ ...plate, fq: factor.value }, { standings: [factor] }), why: 'breakout-in-sand' }
  )
}

/**
 * Breakout of the enlarged base, soil and pier already inside, with the factor for wind; null without a ledge. Beside a neighbour the factor
 * is that of the depth at which the ground of the two would meet: no ground is lifted twice.
 */
export function breakoutOfLedge(context: SoilContext): ChainLink | null {
  const ledge = liftingLedge(context)
  const shared = ledge && meeting(ledge, context.frame.spec.spacing)
  const found = ledge && ultimateBreakout(ledge, context.column, shared ? meetingDepth(shared) : ledge.depth)
  if (!ledge || !found) return null
  const { factor, ultimate, why } = found
  return chainLink({
    id: 'breakout-of-ledge',
    group,
    overBell: ledge.kind === 'bell',
    counting: { ...judged(shared ? `${why}-shared` : why), sources: ['meyerhof-adams-1968', 'ibc-1810-3-3-1-5'] },
    allowable: workedAllowableUplift(
      { ultimate: newtons(ultimate.value), factor: upliftFactors.analysis.wind.value },
      { id: 'allowable-soil-uplift', standings: [ultimate], sources: [ultimate] },
    ),
    show: () => ({ where: ledge.where, worked: [...(shared ? [workedMeetingDepth(shared)] : []), factor, ultimate] }),
  })
}
