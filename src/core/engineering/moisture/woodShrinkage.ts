import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

/** Moisture content below which wood shrinks, 30 %. Source: wood-handbook-4. */
export const fibreSaturation = cited(30, '%', 'wood-handbook-4', 'from memory')

type Inputs = Readonly<{ whole: number; moisture: number }>

/**
 * Shrinkage of wood in one direction, from green to a moisture content.
 * @param whole shrinkage from green to oven-dry in that direction [1], non-negative
 * @param moisture water by mass of dry wood [1], non-negative
 * @returns share of the green size that is lost [1]; zero at and above fibre saturation
 * Formula: S = S0 (30 - M)/30, M in percent, M <= 30
 * Valid: clear wood, even moisture through the piece. Outside: lumber with a wet core shrinks less than this.
 * Source: wood-handbook-4
 * Checked by: tests/external/water-and-time-examples/check.test.ts
 */
export function woodShrinkage({ whole, moisture }: Inputs): number {
  const saturation = fibreSaturation.value
  return moisture >= saturation ? 0 : (whole * (saturation - moisture)) / saturation
}

/** Shrinkage from green, with its work shown. */
export const workedWoodShrinkage = showing({
  id: 'wood-shrinkage',
  quantity: 'ratio',
  formula: String.raw`S = S_0\,\frac{30 - M}{30}`,
  terms: { whole: ['S_0', 'ratio'], moisture: ['M', 'ratio'] },
  sources: ['wood-handbook-4'],
  of: woodShrinkage,
})
