import { cited } from '../../../src/core/engineering/cited.ts'
import { showing } from '../../../src/core/engineering/showing.ts'

export type LumberDirection = 'width' | 'thickness'
/** Shrinkage in percent is `at0` less `perPercent` for each percent of moisture. Source: fpl-rp-489. */
export const lumberShrinkageConstants: Readonly<Record<LumberDirection, Readonly<{ at0: number; perPercent: number }>>> = {
  width: { at0: 6.031, perPercent: 0.215 },
  thickness: { at0: 5.062, perPercent: 0.181 },
}
/** Moisture contents between which the equations hold, and that of green lumber. Source: fpl-rp-489. */
export const lumberMoisture = {
  low: cited(8, '%', 'fpl-rp-489', 'read'),
  high: cited(19, '%', 'fpl-rp-489', 'read'),
  green: cited(28, '%', 'fpl-rp-489', 'read'),
} as const

type Inputs = Readonly<{ moisture: number; direction: LumberDirection }>

/**
 * Shrinkage of commercial softwood lumber from green to a moisture content, all species together.
 * @param moisture water by mass of dry wood [1]
 * @param direction across the width or the thickness of the piece [1]
 * @returns share of the green size that is lost [1]; zero from green up; null where the equations do not hold
 * Formula: S = 6.031 - 0.215 M (width), S = 5.062 - 0.181 M (thickness), percent
 * Valid: 8 to 19 % moisture, and green. Outside: no value.
 * Source: fpl-rp-489
 * Checked by: tests/external/fpl-rp-489/check.test.ts
 */
export function lumberShrinkage({ moisture, direction }: Inputs): number | null {
  if (moisture >= lumberMoisture.green.value) return 0
  if (moisture < lumberMoisture.low.value - 1e-12 || moisture > lumberMoisture.high.value + 1e-12) return null
  const { at0, perPercent } = lumberShrinkageConstants[direction]
  return (at0 - perPercent * 100 * moisture) / 100
}

/** Shrinkage of lumber from green, with its work shown. */
export const workedLumberShrinkage = showing({
  id: 'lumber-shrinkage',
  quantity: 'ratio',
  formula: ({ direction }: Inputs) =>
    direction === 'width' ? String.raw`S = 6.031 - 0.215\,M\ (\%)` : String.raw`S = 5.062 - 0.181\,M\ (\%)`,
  terms: { moisture: ['M', 'ratio'] },
  sources: ['fpl-rp-489'],
  of: lumberShrinkage,
})
