import { groupAction, workedGroupAction } from '../../engineering/wood/groupAction.ts'
import { barBearingLength, barDowelProblem, workedBarBearingLength } from '../../engineering/wood/barDowel.ts'
import { knifePlateProblem, sidePlateProblem } from '../../engineering/wood/boltedPlates.ts'
import {
  adjustedDowelValue,
  loadDuration,
  temperature,
  wetService,
  workedAdjustedDowelValue,
} from '../../engineering/wood/connectionFactors.ts'
import { dowelDistances, geometryFactor, workedGeometryFactor } from '../../engineering/wood/dowelSpacing.ts'
import { workedYieldMode, workedYieldValue, type YieldInputs, type YieldMode, yieldValue } from '../../engineering/wood/yieldEquations.ts'
import { barGrades, bars, boltBendingYield } from '../../engineering/tables/bars.ts'
import { cover } from '../../engineering/tables/concrete.ts'
import { postSections } from '../../engineering/tables/postSections.ts'
import { postDesignValues } from '../../engineering/tables/species.ts'
import { wallRadius } from '../../geometry/holeProfile.ts'
import { firstBoltAbove, boltSpacing } from '../../kinds/bracket/boltPattern.ts'
import { bracketKind } from '../../kinds/index.ts'
import type { Use } from '../../engineering/showing.ts'
import type { Counting } from '../../model/kind.ts'
import type { Check, Standing, Worked } from '../../model/worked.ts'
import { type Metres, metres, newtons, pascals, type SquareMetres, squareMetres } from '../../units/quantity.ts'
import { fromSI, toSI } from '../../units/factors.ts'
import { makeCheck } from '../check.ts'
import { carriesAsConcrete, countingOf } from '../counting.ts'
import type { PierFrame } from '../pierFrame.ts'
import { barLevels, liftAt } from '../placedZones.ts'
import { type Properties, tableProperties } from '../properties.ts'
import { ratedByUser, ratingOf, workedRating } from './bracketRating.ts'
import { type Hold, hold } from './hold.ts'

/** The link between post and concrete: bars through the post, or the bolts of a bracket. */
export function upliftByConnection(frame: PierFrame, properties: Properties = tableProperties(frame.spec)): Check {
  return frame.spec.support.kind === 'bracket' ? bracketBolts(frame, properties) : throughBars(frame, properties)
}

/** The same as a bare number. */
export function connectionHolds(frame: PierFrame, properties: Properties): Hold[] {
  const { connection } = countingOf(frame.spec)
  const group = 'uplift-connection'
  if (frame.spec.support.kind === 'bracket') {
    const rating = ratingOf(frame.spec)
    if (rating !== null) return [hold('bracket-bolts', group, ratedByUser.counted, rating)]
    const row = bracketRow(frame, properties)
    return [hold('bracket-bolts', group, row ? connection.counted : 'not counted', row && rowValue(row))]
  }
  const { refused, row } = barRow(frame, properties)
  const value = refused || !row ? null : rowValue(row)
  return [hold('bar-through-post', group, value === null ? 'not counted' : connection.counted, value)]
}

const notCounted = (why: string, sources: Counting['sources'] = []): Counting => ({ counted: 'not counted', why, sources })

type Inputs<F extends (inputs: never) => unknown> = Parameters<F>[0]
/** What goes into the formulas for a row of like dowels. */
type Row = Readonly<{
  problem: YieldInputs
  count: number
  end: Inputs<typeof geometryFactor>
  /** Null for one dowel, which has no neighbour. */
  between: Inputs<typeof geometryFactor> | null
  group: Inputs<typeof groupAction> | null
}>

const rowOf = (
  problem: YieldInputs,
  { count, spacing, endDistance }: Readonly<{ count: number; spacing: Metres; endDistance: Metres }>,
  group: Row['group'],
): Row => {
  const factor = (actual: Metres, distance: (typeof dowelDistances)['endInTension' | 'spacingInRow']) => ({
    actual,
    diameter: problem.diameter,
    full: distance.full.value,
    floor: distance.floor.value,
  })
  return {
    problem,
    count,
    end: factor(endDistance, dowelDistances.endInTension),
    between: count > 1 ? factor(spacing, dowelDistances.spacingInRow) : null,
    group: count > 1 ? group : null,
  }
}

const adjustment = ({ count }: Row, reference: number, group: number, geometry: number): Inputs<typeof adjustedDowelValue> => ({
  reference: newtons(reference),
  count,
  duration: loadDuration.wind.value,
  wet: wetService.wet.value,
  temperature: temperature.wet['100F'].value,
  group,
  geometry,
  endGrain: 1,
})

/** The adjusted value of a row; null where a distance is under its floor. */
function rowValue(row: Row): number | null {
  const value = yieldValue(row.problem)
  const end = geometryFactor(row.end)
  const between = row.between ? geometryFactor(row.between) : 1
  if (!value || end === null || between === null) return null
  return adjustedDowelValue(adjustment(row, value.value, row.group ? groupAction(row.group).cg : 1, Math.min(end, between)))
}

const modes: readonly YieldMode[] = ['Im', 'Is', 'IIIs', 'IV']

/** All yield modes, the governing one, and the adjusted value of a row of like dowels; null where a distance is under its floor. */
function adjustedRow(
  row: Row,
  standings: readonly Standing[],
  groupUse: Use = {},
): Readonly<{ worked: Worked[]; adjusted: Worked | null }> {
  const { problem } = row
  const use = { standings }
  const each = modes.map((mode) => workedYieldMode(mode)(problem, use)).filter((one) => one !== null)
  const value = workedYieldValue(problem, use)
  const end = workedGeometryFactor(row.end, { id: 'end-distance-factor' })
  const between = row.between && workedGeometryFactor(row.between, { id: 'spacing-factor' })
  const group = row.group && workedGroupAction(row.group, groupUse)
  const worked = [...each, ...[value, end, between, group].filter((one) => one !== null)]
  if (!value || !end || (row.between && !between)) return { worked, adjusted: null }
  const geometry = Math.min(end.value, between?.value ?? 1)
  const adjusted = workedAdjustedDowelValue(adjustment(row, value.value, group?.value ?? 1, geometry), {
    id: 'connection-allowable',
    standings: [...standings, ...(group ? [group.standing] : [])],
    sources: worked.flatMap((one) => one.sources),
  })
  return { worked, adjusted }
}

type BarRow = Readonly<{ refused: Counting | null; length: Inputs<typeof barBearingLength> | null; row: Row | null }>

/** Bars as a row of dowels, or why they may not be counted as one. `length` goes with a refusal that comes after it. */
function barRow(frame: PierFrame, { gravity }: Properties): BarRow {
  const { spec, profile } = frame
  const { connection } = countingOf(spec)
  const refuse = (refused: Counting, length: BarRow['length'] = null): BarRow => ({ refused, length, row: null })
  if (connection.counted === 'not counted') return refuse(connection)
  if (!spec.bars) return refuse(notCounted('no-bar'))
  const levels = barLevels(frame)
  const hosts = levels.map((y) => liftAt(frame, y))
  const roles = hosts.map((id) => frame.lifts.find((lift) => lift.id === id)?.role)
  if (roles.some((role) => role === undefined || !carriesAsConcrete(role, spec))) return refuse(notCounted('bar-outside-concrete'))

  const section = postSections[spec.post.section]
  const narrowest = Math.min(...levels.map((y) => wallRadius(profile, y)))
  const length = {
    pierDiameter: metres(2 * narrowest),
    postWidth: section.width,
    cover: metres(cover.castAgainstEarth.value),
    barLength: spec.bars.length,
  }
  const bearingLength = barBearingLength(length)
  if (bearingLength === null) return refuse(notCounted('bar-without-cover', ['aci-318-19-20-5-1-3']))
  const problem = barDowelProblem({
    diameter: bars[spec.bars.size].diameter.value,
    postWidth: section.width,
    bearingLength,
    gravity,
    bendingYield: barGrades[spec.bars.grade].dowelYield.value,
  })
  if (!problem || !yieldValue(problem)) return refuse(notCounted('outside-yield-range', ['nds-2018-12-3-1']), length)
  const { count, spacing, aboveFoot: endDistance } = spec.bars
  return { refused: null, length, row: rowOf(problem, { count, spacing, endDistance }, groupInConcrete(frame, 2 * narrowest)) }
}

function throughBars(frame: PierFrame, properties: Properties): Check {
  const { spec } = frame
  const { refused, length, row } = barRow(frame, properties)
  const shownLength = length && workedBarBearingLength(length)
  const base = { id: 'bar-through-post', group: 'uplift-connection', where: spec.bars ? ['bars'] : ['post'] } as const
  const worked = shownLength ? [shownLength] : []
  if (refused || !row || !spec.bars) return makeCheck({ ...base, worked, allowable: null, counting: refused ?? notCounted('no-bar') })
  const standings = [barGrades[spec.bars.grade].dowelYield.standing, bars[spec.bars.size].diameter.standing]
  const shown = adjustedRow(row, standings, { standings: ['from memory'], sources: ['memory'] })
  return makeCheck({
    ...base,
    worked: [...worked, ...shown.worked],
    allowable: shown.adjusted,
    counting: shown.adjusted ? countingOf(spec).connection : notCounted('dowel-too-near-end', ['nds-2018-12-5']),
  })
}

const sectionArea = (frame: PierFrame): SquareMetres => {
  const { shape, width, depth } = postSections[frame.spec.post.section]
  return squareMetres(shape === 'round' ? (Math.PI * width * width) / 4 : width * depth)
}

/** Group action of bars in a row in concrete: the wood-to-metal load/slip figure, the lower one, with concrete as the side member. */
function groupInConcrete(frame: PierFrame, pierDiameter: number): Row['group'] {
  const { spec } = frame
  if (!spec.bars) return null
  const wood = postDesignValues(spec.post.species, postSections[spec.post.section].make)
  const area = sectionArea(frame)
  // Modulus of concrete 57,000 sqrt(f'c), psi: from memory.
  const concrete = pascals(toSI(57_000 * Math.sqrt(fromSI(spec.concrete.strength, 'psi')), 'psi'))
  return {
    diameter: bars[spec.bars.size].diameter.value,
    spacing: spec.bars.spacing,
    count: spec.bars.count,
    main: { elasticity: wood.elasticity.value, area },
    side: { elasticity: concrete, area: squareMetres((Math.PI * pierDiameter ** 2) / 4 - area) },
    joint: 'wood-metal',
  }
}

/** Bolts of a bracket as a row of dowels; null outside the range of the yield equations. */
function bracketRow(frame: PierFrame, { gravity }: Properties): Row | null {
  const { spec } = frame
  if (spec.support.kind !== 'bracket') throw new Error('bracketRow: the pier has no bracket')
  const { bracket } = spec.support
  const record = bracketKind(bracket.kind)
  const section = postSections[spec.post.section]
  const inputs = {
    diameter: bracket.boltDiameter,
    postWidth: section.width,
    plate: bracket.plateThickness,
    gravity,
    bendingYield: boltBendingYield.value,
  }
  const problem = record.bolts === 'knife plate' ? knifePlateProblem(inputs) : sidePlateProblem(inputs)
  if (!problem) return null
  const wood = postDesignValues(spec.post.species, section.make)
  const plates = record.bolts === 'knife plate' ? 1 : 2
  const row = { count: bracket.boltCount, spacing: metres(boltSpacing(bracket)), endDistance: metres(firstBoltAbove(bracket)) }
  return rowOf(problem, row, {
    diameter: bracket.boltDiameter,
    spacing: row.spacing,
    count: row.count,
    main: { elasticity: wood.elasticity.value, area: sectionArea(frame) },
    side: { elasticity: steelElasticity, area: squareMetres(plates * bracket.plateThickness * 0.72 * section.depth) },
    joint: 'wood-metal',
  })
}

function bracketBolts(frame: PierFrame, properties: Properties): Check {
  const row = bracketRow(frame, properties)
  const base = { id: 'bracket-bolts', group: 'uplift-connection', where: ['bolts', 'bracket-plates'] } as const
  const { worked, adjusted } = row ? adjustedRow(row, [boltBendingYield.standing]) : { worked: [], adjusted: null }
  const rating = ratingOf(frame.spec)
  if (rating !== null) {
    const shown = adjusted ? [...worked, adjusted] : worked
    return makeCheck({ ...base, worked: shown, allowable: workedRating(rating), counting: ratedByUser })
  }
  if (!row) return makeCheck({ ...base, worked, allowable: null, counting: notCounted('outside-yield-range', ['nds-2018-12-3-1']) })
  return makeCheck({ ...base, worked, allowable: adjusted, counting: countingOf(frame.spec).connection })
}

/** Modulus of steel, 30,000,000 psi, as the group action factor takes it. Source: nds-2018-11-3-6. */
const steelElasticity = pascals(toSI(30e6, 'psi'))
