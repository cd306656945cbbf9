import type { CubicMetres } from '../../units/quantity.ts'

type Inputs = Readonly<{ volume: CubicMetres; yield: CubicMetres }>

/**
 * Whole bags of concrete mix for a volume.
 * @param volume to order, waste included [m3], non-negative
 * @param yield volume that one bag makes [m3], positive
 * @returns bags, rounded up [1]; a count that is whole to nine digits is not rounded further
 * Formula: n = ceil(V/y)
 * Valid: mixed to its yield. Outside: dry mix left loose fills more room; the count is then high.
 * Source: bag-yields
 * Checked by: tests/external/bag-yields/check.test.ts
 */
export function bagCount({ volume, yield: each }: Inputs): number {
  return Math.max(0, Math.ceil(volume / each - 1e-9))
}
