import { betaLowerBound, workedBetaLowerBound } from '../../engineering/soil/betaLowerBound.ts'
import { presumptiveFriction, workedPresumptiveFriction } from '../../engineering/soil/presumptiveFriction.ts'
import { workedSideFriction } from '../../engineering/soil/sideFriction.ts'
import { factoredDeadLoad, deadLoadShare } from '../../engineering/soil/factoredDeadLoad.ts'
import { userFriction, workedUserFriction } from '../../engineering/soil/userFriction.ts'
import type { Counting } from '../../model/kind.ts'
import type { Check } from '../../model/worked.ts'
import { metres, newtons, pascals, radians } from '../../units/quantity.ts'
import { makeCheck } from '../check.ts'
import { allowableFriction, betaFriction } from './betaFriction.ts'
import { frictionPlusWeight } from './combine.ts'
import { castRoles } from './countedLength.ts'
import { type Hold, hold } from './hold.ts'
import type { SoilContext, SoilFigures, SoilSite } from './soilContext.ts'
import type { SoilColumn } from './soilColumn.ts'

/** Weight alone, when no length of shaft is left to count: still a resistance, with the reason. */
const weightAlone = (why: string): Counting => ({ counted: 'counted', why, sources: ['ibc-1605-3'] })

const group = 'uplift-soil'

/** Lower bound of friction for each unit of soil pressure, by depth. */
export const lowerBeta = (column: SoilColumn) => (depth: number) =>
  betaLowerBound({ frictionAngle: column.at(depth).frictionAngle ?? radians(0) })

/** Weight with the lower bound of side friction: normally consolidated ground, no credit for how it was laid down. The default. */
export function lowerBound({ frame, column, length, passed, weight, factored, counting }: SoilContext): Check {
  const where = frame.lifts.filter((lift) => castRoles.has(lift.role)).map((lift) => lift.id)
  const isRock = passed.some((values) => values.frictionAngle === null)
  if (!length || isRock) {
    return makeCheck({
      id: 'friction-and-weight',
      group,
      where,
      worked: [weight],
      allowable: { ...factored, id: 'allowable-soil-uplift' },
      counting:
        counting.counted === 'not counted' ? counting : weightAlone(isRock ? 'no-friction-angle-for-rock' : 'no-length-below-frost'),
    })
  }
  const standings = passed.map((values) => values.strengthStanding)
  const betas = passed.flatMap((values) =>
    values.frictionAngle === null
      ? []
      : [workedBetaLowerBound({ frictionAngle: values.frictionAngle }, { standings: [values.strengthStanding], sources: [values.source] })],
  )
  const { ultimate, allowable } = betaFriction(column, length, {
    id: 'side-friction-lower-bound',
    beta: lowerBeta(column),
    standings,
    sources: ['gec-10-2018', 'computed-here'],
  })
  return makeCheck({
    id: 'friction-and-weight',
    group,
    where: length.where,
    worked: [...betas, ultimate, allowable, weight, factored],
    allowable: frictionPlusWeight(allowable, factored),
    counting,
  })
}

/** 0.6 of a weight [N]. */
export const factoredWeight = (weight: number): number => factoredDeadLoad({ weight: newtons(weight), share: deadLoadShare.value })

/** The same as a bare number. */
export function lowerBoundHold({ column, length, passed, weight, counting }: SoilFigures): Hold {
  const isCast = length !== null && passed.every((values) => values.frictionAngle !== null)
  const friction = isCast ? allowableFriction(column, length, { beta: lowerBeta(column) }) : 0
  const counted = isCast || counting.counted === 'not counted' ? counting.counted : 'counted'
  return hold('friction-and-weight', group, counted, friction + factoredWeight(weight))
}

/** What goes into the friction that the user answers for: the least of the soils passed; null unless each has one. */
function userProblem({ length, passed }: SoilSite) {
  if (!length || passed.some((values) => values.userFriction === null)) return null
  const allowable = pascals(Math.min(...passed.map((values) => values.userFriction ?? 0)))
  return { allowable, perimeter: length.perimeter, length: metres(length.to - length.from) }
}

/** Weight with the side friction that the user answers for, its factor already inside; null unless every soil passed has one. */
export function byUser(context: SoilContext): Check | null {
  const { length, weight, factored, counting } = context
  const problem = userProblem(context)
  if (!problem || !length) return null
  const friction = workedUserFriction(problem)
  return makeCheck({
    id: 'user-friction-and-weight',
    group,
    where: length.where,
    worked: [friction, weight, factored],
    allowable: frictionPlusWeight(friction, factored),
    counting:
      counting.counted === 'not counted'
        ? counting
        : { counted: "engineer's judgement", why: 'friction-entered-by-user', sources: ['user'] },
  })
}

/** The same as a bare number. */
export function byUserHold(figures: SoilFigures): Hold | null {
  const problem = userProblem(figures)
  const counted = figures.counting.counted === 'not counted' ? 'not counted' : "engineer's judgement"
  return problem && hold('user-friction-and-weight', group, counted, userFriction(problem) + factoredWeight(figures.weight))
}

/** Presumptive compression friction: shown so that nobody hopes for more, never a capacity. */
export function upperBound({ frame, length, passed, counting }: SoilContext): Check | null {
  if (!length || counting.counted === 'not counted') return null
  const strongest = pascals(Math.max(...passed.map((values) => values.bearing)))
  const { diameter } = frame.spec.hole
  const unit = presumptiveFriction({ bearing: strongest, diameter })
  const shown = workedPresumptiveFriction({ bearing: strongest, diameter })
  if (unit === null || shown === null) return null
  const bound = workedSideFriction(
    { shear: unit, perimeter: length.perimeter, length: metres(length.to - length.from) },
    { id: 'presumptive-friction-bound', standings: [shown.standing], sources: shown.sources },
  )
  return {
    id: 'presumptive-bound',
    group,
    where: length.where,
    worked: [shown, bound],
    allowable: null,
    why: 'upper-bound-only',
    counted: 'upper bound',
    sources: bound.sources,
    standing: bound.standing,
  }
}
