import type { CubicMetres } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

type Inputs = Readonly<{ volume: CubicMetres; yield: CubicMetres; waste: number }>

/**
 * Whole bags of concrete mix for a volume in place.
 * @param volume in place [m3], non-negative
 * @param yield volume that one bag makes [m3], positive
 * @param waste extra share to order [1], non-negative
 * @returns bags, rounded up [1]
 * Formula: n = ceil[V (1 + w)/y]
 * Valid: mixed to its yield. Outside: dry mix left loose fills more room; the count is then high.
 * Source: bag-yields
 * Checked by: tests/external/bag-yields/check.test.ts
 */
export function bagCount({ volume, yield: each, waste }: Inputs): number {
  // A volume that is a whole number of bags but for the last bit does not ask for one more.
  return Math.max(0, Math.ceil((volume * (1 + waste)) / each - 1e-9))
}

/** Bags, with their work shown. */
export const workedBagCount = showing({
  id: 'bag-count',
  quantity: 'count',
  formula: String.raw`n = \left\lceil V(1+w)/y \right\rceil`,
  terms: { volume: ['V', 'volume'], waste: ['w', 'ratio'], yield: ['y', 'volume'] },
  sources: ['bag-yields'],
  of: bagCount,
})
