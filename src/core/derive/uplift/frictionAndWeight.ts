import { betaFriction, frictionPlusWeight } from './betaFriction.ts'
import { type ChainLink, chainLink } from './chainLink.ts'
import type { CountedLength } from './countedLength.ts'
import type { SoilColumn } from './soilColumn.ts'
import type { SoilContext } from './soilContext.ts'
import type { SoilValues } from './soilValues.ts'
import { retold } from '../../engineering/showing.ts'
import { betaLowerBound, workedBetaLowerBound } from '../../engineering/soil/betaLowerBound.ts'
import { presumptiveFriction, workedPresumptiveFriction } from '../../engineering/soil/presumptiveFriction.ts'
import { workedSideFriction } from '../../engineering/soil/sideFriction.ts'
import { workedUserFriction } from '../../engineering/soil/userFriction.ts'
import type { Counting } from '../../model/kind.ts'
import type { ReasonId } from '../../model/saidIds.ts'
import { castRoles } from '../../model/solid.ts'
import type { Check, Worked } from '../../model/worked.ts'
import { metres, pascals, radians } from '../../units/quantity.ts'

/** Weight alone, when no length of shaft is left to count: still a resistance, with the reason. */
const weightAlone = (why: ReasonId): Counting => ({ counted: 'counted', why, sources: ['ibc-1605-3'] })

const group = 'uplift-soil'

/** What is cast against the ground, counted or not. */
export const castLifts = ({ frame }: SoilContext): readonly string[] =>
  frame.lifts.filter((lift) => castRoles.has(lift.role)).map((lift) => lift.id)

/** Side friction at its lower bound: by depth, the friction of each unit of soil pressure in ground that is normally consolidated. */
export const lowerBoundFriction = (column: SoilColumn, length: CountedLength, passed: readonly SoilValues[]) =>
  betaFriction(column, length, {
    beta: (depth) => betaLowerBound({ frictionAngle: column.at(depth).frictionAngle ?? radians(0) }),
    shown: {
      id: 'side-friction-lower-bound-ultimate',
      standings: passed.map((values) => values.strengthStanding),
      sources: ['gec-10-2018', 'computed-here'],
    },
    allowableId: 'side-friction-lower-bound-allowable',
  })

/** The lower bound for each unit of soil pressure, of every soil passed that has one. */
const betas = (passed: readonly SoilValues[]): Worked[] =>
  passed.flatMap(({ frictionAngle, strengthStanding, source }) =>
    frictionAngle === null ? [] : [workedBetaLowerBound({ frictionAngle }, { standings: [strengthStanding], sources: [source] })],
  )

/** Weight with the lower bound of side friction: normally consolidated ground, no credit for how it was laid down. The default. */
export function lowerBound(context: SoilContext): ChainLink {
  const { column, length, passed, weight, factored, counting, ledge } = context
  const id = 'friction-and-weight'
  const isRock = passed.some((values) => values.frictionAngle === null)
  if (!length || isRock) {
    return chainLink({
      id,
      group,
      counting:
        counting.counted === 'not counted' ? counting : weightAlone(isRock ? 'no-friction-angle-for-rock' : 'no-length-below-frost'),
      allowable: retold(factored, 'allowable-soil-uplift'),
      show: () => ({ where: castLifts(context), worked: [weight] }),
    })
  }
  const { ultimate, allowable } = lowerBoundFriction(column, length, passed)
  const asShaft = counting.counted !== 'not counted' && ledge?.kind === 'bell'
  return chainLink({
    id,
    group,
    counting: asShaft ? { ...counting, why: 'bell-counted-as-shaft' } : counting,
    allowable: frictionPlusWeight(allowable, factored),
    show: () => ({ where: length.where, worked: [...betas(passed), ultimate, allowable, weight, factored] }),
  })
}

/** Weight with the side friction that the user answers for, its factor already inside; null unless every soil passed has one. */
export function byUser({ length, passed, weight, factored, counting }: SoilContext): ChainLink | null {
  if (!length || passed.some((values) => values.userFriction === null)) return null
  const allowable = pascals(Math.min(...passed.map((values) => values.userFriction ?? 0)))
  const friction = workedUserFriction({ allowable, perimeter: length.perimeter, length: metres(length.to - length.from) })
  return chainLink({
    id: 'user-friction-and-weight',
    group,
    counting:
      counting.counted === 'not counted'
        ? counting
        : { counted: "engineer's judgement", why: 'friction-entered-by-user', sources: ['user'] },
    allowable: frictionPlusWeight(friction, factored),
    show: () => ({ where: length.where, worked: [friction, weight, factored] }),
  })
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
    { id: 'presumptive-friction-bound', standings: [shown], sources: [shown] },
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
