import {
  blockShear,
  blockUplift,
  blockWeight,
  groupRule,
  workedBlockShear,
  workedBlockUplift,
  workedBlockWeight,
} from '../../engineering/soil/pierGroup.ts'
import type { Counting } from '../../model/kind.ts'
import type { Check } from '../../model/worked.ts'
import { metres, newtons, pascals } from '../../units/quantity.ts'
import { makeCheck } from '../check.ts'
import { betaFriction, ultimateFriction } from './betaFriction.ts'
import { castRoles } from './countedLength.ts'
import { lowerBeta } from './frictionAndWeight.ts'
import { type Hold, hold } from './hold.ts'
import type { SoilContext, SoilFigures, SoilSite } from './soilContext.ts'

/** The one way in which the ground holds that caps every other: the code takes the lesser of a pier alone and its share of the block. */
export const blockOfPiersId = 'block-of-piers'
const group = 'uplift-soil'
const judged: Counting = { counted: "engineer's judgement", why: 'piers-share-a-block', sources: ['ibc-1810-3-3-1-6'] }

/** Geometry of the block; null for a pier whose neighbour is far, or that may not be counted. */
function blockProblem({ frame, column, length, counting }: SoilSite) {
  const { spacing, hole } = frame.spec
  if (spacing === null || spacing >= groupRule.closerThan.value * hole.diameter * (1 - 1e-9) || counting.counted === 'not counted')
    return null
  const { slope } = frame.spec.site
  const bottom = metres(length?.to ?? Math.max(0, -frame.fillBottom - slope * frame.profile.shaftRadius))
  return { spacing: metres(Math.max(spacing, hole.diameter)), diameter: hole.diameter, stress: pascals(column.stress(bottom)) }
}

/** Friction that the faces of the block can show: none where no length counts, and none in rock, for which no angle is given. */
const hasFriction = ({ length, passed }: SoilSite) => length !== null && passed.every((values) => values.frictionAngle !== null)

/** What a pier holds as one of a group, IBC 1810.3.3.1.6; null unless a neighbour is closer than three diameters. */
export function blockOfPiers(context: SoilContext): Check | null {
  const { frame, column, length, passed, weight } = context
  const block = blockProblem(context)
  if (!block) return null
  const { spacing, diameter } = block
  const ultimate =
    length && hasFriction(context)
      ? betaFriction(column, length, {
          id: 'side-friction-lower-bound',
          beta: lowerBeta(column),
          standings: passed.map((values) => values.strengthStanding),
          sources: ['gec-10-2018', 'computed-here'],
        }).ultimate
      : null
  const whole = workedBlockWeight({ pier: newtons(weight.value), ...block }, { standings: [weight.standing] })
  const shear = workedBlockShear(
    { ultimate: newtons(ultimate?.value ?? 0), spacing, diameter },
    { standings: ultimate ? [ultimate.standing] : [], sources: ultimate?.sources ?? [] },
  )
  return makeCheck({
    id: blockOfPiersId,
    group,
    where: length?.where ?? frame.lifts.filter((lift) => castRoles.has(lift.role)).map((lift) => lift.id),
    worked: [weight, whole, ...(ultimate ? [ultimate] : []), shear],
    allowable: workedBlockUplift(
      { weight: newtons(whole.value), faces: newtons(shear.value), share: groupRule.share.value },
      { id: 'allowable-soil-uplift', standings: [whole.standing, shear.standing] },
    ),
    counting: judged,
  })
}

/** The same as a bare number. */
export function blockOfPiersHold(figures: SoilFigures): Hold | null {
  const block = blockProblem(figures)
  if (!block) return null
  const { column, length, weight } = figures
  const ultimate = newtons(length && hasFriction(figures) ? ultimateFriction(column, length, { beta: lowerBeta(column) }) : 0)
  const whole = blockWeight({ pier: newtons(weight), ...block })
  return hold(
    blockOfPiersId,
    group,
    judged.counted,
    blockUplift({ weight: whole, faces: blockShear({ ultimate, ...block }), share: groupRule.share.value }),
  )
}
