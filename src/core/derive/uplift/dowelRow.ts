import { type groupAction, workedGroupAction } from '../../engineering/wood/groupAction.ts'
import {
  type adjustedDowelValue,
  loadDuration,
  temperature,
  wetService,
  workedAdjustedDowelValue,
} from '../../engineering/wood/connectionFactors.ts'
import { dowelDistances, type geometryFactor, workedGeometryFactor } from '../../engineering/wood/dowelSpacing.ts'
import { workedYieldMode, workedYieldValue, type YieldInputs } from '../../engineering/wood/yieldEquations.ts'
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
export const dowelRowOf = (
  problem: YieldInputs,
  { count, spacing, endDistance }: Readonly<{ count: number; spacing: Metres; endDistance: Metres }>,
  group: () => Row['group'],
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
    group: count > 1 ? group() : null,
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

const modes = (['Im', 'Is', 'IIIs', 'IV'] as const).map(workedYieldMode)

/**
 * The adjusted value of a row of like dowels, null outside the range of the yield equations and where a distance is under its floor; and
 * its steps: all yield modes, the governing one, and the factors.
 */
export function adjustedRow(
  row: Row,
  standings: readonly Standing[],
  groupUse: Use = {},
): Readonly<{ adjusted: Worked | null; isInRange: boolean; steps: () => readonly Worked[] }> {
  const { problem } = row
  const use = { standings }
  const value = workedYieldValue(problem, use)
  const end = workedGeometryFactor(row.end, { id: 'end-distance-factor' })
  const between = row.between && workedGeometryFactor(row.between, { id: 'spacing-factor' })
  const group = row.group && workedGroupAction(row.group, groupUse)
  const found = [value, end, between, group].filter((one) => one !== null)
  const steps = () => [...modes.map((mode) => mode(problem, use)).filter((one) => one !== null), ...found]
  if (!value || !end || (row.between && !between)) return { adjusted: null, isInRange: value !== null, steps }
  const geometry = Math.min(end.value, between?.value ?? 1)
  const adjusted = workedAdjustedDowelValue(adjustment(row, value.value, group?.value ?? 1, geometry), {
    id: 'connection-allowable',
    standings: group ? [...standings, group] : standings,
    sources: found,
  })
  return { adjusted, isInRange: true, steps }
}
