import { weakest } from '../engineering/showing.ts'
import { workedAllowableUplift, upliftFactors } from '../engineering/soil/upliftFactor.ts'
import { betaLowerBound, workedBetaLowerBound } from '../engineering/soil/betaLowerBound.ts'
import { presumptiveFriction, workedPresumptiveFriction } from '../engineering/soil/presumptiveFriction.ts'
import { sideFrictionByBeta, workedSideFriction, workedSideFrictionByBeta } from '../engineering/soil/sideFriction.ts'
import { workedUserFriction } from '../engineering/soil/userFriction.ts'
import { waterUnitWeight } from '../engineering/tables/materials.ts'
import { fillKind } from '../kinds/index.ts'
import type { Counting } from '../model/kind.ts'
import type { QuantityLine } from '../model/result.ts'
import type { Check, Worked } from '../model/worked.ts'
import { type Metres, metres, newtons, pascals, radians } from '../units/quantity.ts'
import { makeCheck } from './check.ts'
import type { PierFrame } from './pierFrame.ts'
import { workedPierWeight } from './pierWeight.ts'
import { type SoilColumn, soilColumn } from './soilColumn.ts'

/** Length of shaft cast against undisturbed ground that may be counted, as depths below the downhill edge [m]; null when none is left. */
export type CountedLength = Readonly<{ from: Metres; to: Metres; perimeter: Metres; where: readonly string[] }>

const castRoles = new Set(['concrete', 'dry-mix', 'flowable-fill'])

/**
 * What touches undisturbed ground over the shaft, less the depth of frost and of topsoil. Measured below the downhill edge. The bell is left
 * out: it lifts a cone, it does not slide.
 */
export function countedLength({ spec, profile, lifts, fillBottom }: PierFrame): CountedLength | null {
  const drop = spec.site.slope * profile.shaftRadius
  let bottom = fillBottom
  let cast: { low: number; high: number; where: string[] } | null = null
  for (const lift of lifts) {
    const top = lift.to.kind === 'level' ? lift.to.y : -drop
    if (castRoles.has(lift.role))
      cast = cast ? { low: cast.low, high: top, where: [...cast.where, lift.id] } : { low: bottom, high: top, where: [lift.id] }
    bottom = top
  }
  if (!cast) return null
  const shaftBottom = Math.max(cast.low, spec.hole.bell ? profile.bottom + spec.hole.bell.height : cast.low)
  const flareEnd = spec.hole.flare ? spec.hole.flare.depth - drop : 0
  const from = Math.max(spec.site.frostDepth, spec.site.topsoil, -cast.high - drop, flareEnd)
  const to = -shaftBottom - drop
  return to > from ? { from: metres(from), to: metres(to), perimeter: metres(Math.PI * spec.hole.diameter), where: cast.where } : null
}

/** Every way in which the ground may hold the pier down, each on its own. Never two that use the same soil. */
export function upliftBySoil(frame: PierFrame, lines: readonly QuantityLine[]): Check[] {
  const column = soilColumn(frame)
  const length = countedLength(frame)
  const { weight, factored } = workedPierWeight(frame, lines)
  const kind = fillKind(frame.spec.fill.kind)
  const counting = kind.counting.weight.counted === 'not counted' ? kind.counting.weight : kind.counting.sideFriction
  const context: Context = { frame, column, length, weight, factored, counting }
  return [lowerBound(context), byUser(context), upperBound(context)].filter((check) => check !== null)
}

type Context = Readonly<{
  frame: PierFrame
  column: SoilColumn
  length: CountedLength | null
  weight: Worked
  factored: Worked
  counting: Counting
}>

/** Weight alone, when no length of shaft is left to count: still a resistance, with the reason. */
const withoutFriction: Counting = { counted: 'counted', why: 'no-length-below-frost', sources: ['ibc-1809-5'] }

function lowerBound({ frame, column, length, weight, factored, counting }: Context): Check {
  const where = frame.lifts.filter((lift) => castRoles.has(lift.role)).map((lift) => lift.id)
  const soils = column.layers.filter((layer) => layer.values.frictionAngle !== null).map((layer) => layer.values)
  const first = soils[0]
  if (!length || !first) {
    const reason = length ? { ...withoutFriction, why: 'no-friction-angle-for-rock' } : withoutFriction
    return makeCheck({
      id: 'friction-and-weight',
      group: 'uplift-soil',
      where,
      worked: [weight, factored],
      allowable: { ...factored, id: 'allowable-soil-uplift' },
      counting: counting.counted === 'not counted' ? counting : reason,
    })
  }
  const beta = (depth: number) => betaLowerBound({ frictionAngle: column.at(depth).frictionAngle ?? radians(0) })
  const friction = sideFrictionByBeta({
    beta,
    layers: column.layers,
    waterTable: column.waterTable,
    water: waterUnitWeight.value,
    perimeter: length.perimeter,
    from: length.from,
    to: length.to,
    breaks: layerDepths(column),
  })
  const meanStress = pascals(
    sideFrictionByBeta({
      beta: () => 1,
      layers: column.layers,
      waterTable: column.waterTable,
      water: waterUnitWeight.value,
      perimeter: length.perimeter,
      from: length.from,
      to: length.to,
    }) /
      (length.perimeter * (length.to - length.from)),
  )
  const span = metres(length.to - length.from)
  const passed = [...new Set(soilsBetween(column, length))]
  const standings = passed.map((values) => values.strengthStanding)
  const betas = passed.flatMap((values) =>
    values.frictionAngle === null
      ? []
      : [workedBetaLowerBound({ frictionAngle: values.frictionAngle }, { standings: [values.strengthStanding], sources: [values.source] })],
  )
  const ultimate = workedSideFrictionByBeta(
    { beta: friction / (meanStress * length.perimeter * span), meanStress, perimeter: length.perimeter, length: span },
    { id: 'side-friction-lower-bound', standings },
  )
  const safe = workedAllowableUplift(
    { ultimate: newtons(ultimate.value), factor: upliftFactors.analysis.wind.value },
    { id: 'allowable-side-friction', standings },
  )
  return makeCheck({
    id: 'friction-and-weight',
    group: 'uplift-soil',
    where: [...length.where],
    worked: [...betas, ultimate, safe, weight, factored],
    allowable: frictionPlusWeight(safe, factored),
    counting,
  })
}

function byUser({ column, length, weight, factored, counting }: Context): Check | null {
  if (!length) return null
  const passed = soilsBetween(column, length)
  const values = passed.find((one) => one.userFriction !== null)
  if (!values?.userFriction || passed.some((one) => one.userFriction === null)) return null
  const lowest = pascals(Math.min(...passed.map((one) => one.userFriction ?? 0)))
  const friction = workedUserFriction({ allowable: lowest, perimeter: length.perimeter, length: metres(length.to - length.from) })
  return makeCheck({
    id: 'user-friction-and-weight',
    group: 'uplift-soil',
    where: length.where,
    worked: [friction, weight, factored],
    allowable: frictionPlusWeight(friction, factored),
    counting,
  })
}

/** Presumptive compression friction: shown so that nobody hopes for more, never a capacity. */
function upperBound({ frame, column, length, counting }: Context): Check | null {
  if (!length || counting.counted === 'not counted') return null
  const strongest = Math.max(...soilsBetween(column, length).map((one) => one.bearing))
  const unit = presumptiveFriction({ bearing: pascals(strongest), diameter: frame.spec.hole.diameter })
  const shown = workedPresumptiveFriction({ bearing: pascals(strongest), diameter: frame.spec.hole.diameter })
  if (unit === null || shown === null) return null
  const bound = workedSideFriction(
    { shear: unit, perimeter: length.perimeter, length: metres(length.to - length.from) },
    { id: 'presumptive-friction-bound', standings: [shown.standing], sources: shown.sources },
  )
  return {
    id: 'presumptive-bound',
    group: 'uplift-soil',
    where: length.where,
    worked: [shown, bound],
    allowable: null,
    why: 'upper-bound-only',
    counted: 'upper bound',
    sources: bound.sources,
    standing: bound.standing,
  }
}

/** Side friction with its factor inside, plus 0.6 of the weight: one factor on each. */
const frictionPlusWeight = (friction: Worked, factored: Worked): Worked => ({
  id: 'allowable-soil-uplift',
  value: friction.value + factored.value,
  quantity: 'force',
  formula: String.raw`T_a = R + 0.6\,D`,
  inputs: [
    { symbol: 'R', name: 'friction', value: friction.value, quantity: 'force' },
    { symbol: String.raw`0.6\,D`, name: 'weight', value: factored.value, quantity: 'force' },
  ],
  sources: [...new Set([...friction.sources, ...factored.sources])],
  standing: weakest(friction.standing, factored.standing),
})

function layerDepths(column: SoilColumn): Metres[] {
  let bottom = 0
  return column.layers.slice(0, -1).map((layer) => {
    bottom += layer.thickness
    return metres(bottom)
  })
}

const soilsBetween = (column: SoilColumn, { from, to }: CountedLength) =>
  [from, ...layerDepths(column).filter((depth) => depth > from && depth < to)].map((depth) => column.at(depth))
