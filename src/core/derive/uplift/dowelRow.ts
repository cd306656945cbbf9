import { groupAction, workedGroupAction } from '../../engineering/wood/groupAction.ts'
import {
  adjustedDowelValue,
  loadDuration,
  temperature,
  wetService,
  workedAdjustedDowelValue,
} from '../../engineering/wood/connectionFactors.ts'
import { dowelDistances, geometryFactor, workedGeometryFactor } from '../../engineering/wood/dowelSpacing.ts'
import { workedYieldMode, workedYieldValue, type YieldInputs, type YieldMode, yieldValue } from '../../engineering/wood/yieldEquations.ts'
import type { Use } from '../../engineering/showing.ts'
import type { Standing, Worked } from '../../model/worked.ts'
import { type Metres, newtons } from '../../units/quantity.ts'

type Inputs<F extends (inputs: never) => unknown> = Parameters<F>[0]
/** What goes into the formulas for a row of like dowels. */
export type Row = Readonly<{
  problem: YieldInputs
  count: number
  end: Inputs<typeof geometryFactor>
  /** Null for one dowel, which has no neighbour. */
  between: Inputs<typeof geometryFactor> | null
  group: Inputs<typeof groupAction> | null
}>

/** A row of like dowels: end distance toward the pull, spacing along it. */
export const rowOf = (
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
export function rowValue(row: Row): number | null {
  const value = yieldValue(row.problem)
  const end = geometryFactor(row.end)
  const between = row.between ? geometryFactor(row.between) : 1
  if (!value || end === null || between === null) return null
  return adjustedDowelValue(adjustment(row, value.value, row.group ? groupAction(row.group).cg : 1, Math.min(end, between)))
}

const modes: readonly YieldMode[] = ['Im', 'Is', 'IIIs', 'IV']

/** All yield modes, the governing one, and the adjusted value of a row of like dowels; null where a distance is under its floor. */
export function adjustedRow(
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
