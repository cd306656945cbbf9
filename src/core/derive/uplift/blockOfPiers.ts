import { groupRule, workedBlockShear, workedBlockUplift, workedBlockWeight } from '../../engineering/soil/pierGroup.ts'
import type { Counting } from '../../model/kind.ts'
import { metres, newtons, pascals } from '../../units/quantity.ts'
import { type ChainLink, chainLink } from './chainLink.ts'
import { castLifts, lowerBoundFriction } from './frictionAndWeight.ts'
import type { SoilContext } from './soilContext.ts'

/** The one way in which the ground holds that caps every other: the code takes the lesser of a pier alone and its share of the block. */
export const blockOfPiersId = 'block-of-piers'
const judged: Counting = { counted: "engineer's judgement", why: 'piers-share-a-block', sources: ['ibc-1810-3-3-1-6'] }

/** Geometry of the block; null for a pier whose neighbour is far, or that may not be counted. */
function blockProblem({ frame, column, length, counting }: SoilContext) {
  const { spacing, hole } = frame.spec
  if (spacing === null || spacing >= groupRule.closerThan.value * hole.diameter * (1 - 1e-9) || counting.counted === 'not counted')
    return null
  const { slope } = frame.spec.site
  const bottom = metres(length?.to ?? Math.max(0, -frame.fillBottom - slope * frame.profile.shaftRadius))
  return { spacing: metres(Math.max(spacing, hole.diameter)), diameter: hole.diameter, stress: pascals(column.stress(bottom)) }
}

/** Friction that the faces of the block can show: none where no length counts, and none in rock, for which no angle is given. */
const hasFriction = ({ length, passed }: SoilContext) => length !== null && passed.every((values) => values.frictionAngle !== null)

/** What a pier holds as one of a group, IBC 1810.3.3.1.6; null unless a neighbour is closer than three diameters. */
export function blockOfPiers(context: SoilContext): ChainLink | null {
  const { column, length, passed, weight } = context
  const block = blockProblem(context)
  if (!block) return null
  const { spacing, diameter } = block
  const ultimate = length && hasFriction(context) ? lowerBoundFriction(column, length, passed).ultimate : null
  const whole = workedBlockWeight({ pier: newtons(weight.value), ...block }, { standings: [weight] })
  const shear = workedBlockShear(
    { ultimate: newtons(ultimate?.value ?? 0), spacing, diameter },
    ultimate ? { standings: [ultimate], sources: [ultimate] } : {},
  )
  return chainLink({
    id: blockOfPiersId,
    group: 'uplift-soil',
    counting: judged,
    allowable: workedBlockUplift(
      { weight: newtons(whole.value), faces: newtons(shear.value), share: groupRule.share.value },
      { id: 'allowable-soil-uplift', standings: [whole, shear] },
    ),
    show: () => ({ where: length?.where ?? castLifts(context), worked: [weight, whole, ...(ultimate ? [ultimate] : []), shear] }),
  })
}
