import { type CubicMetres, type Newtons, newtons, type UnitWeight } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

type Inputs = Readonly<{ perVolume: UnitWeight; yield: CubicMetres }>

/**
 * Cement in a bag of concrete mix, worked back from mixed concrete of the same kind.
 * @param perVolume cement in a volume of mixed concrete [N/m3], positive
 * @param yield volume that the bag makes when mixed [m3], positive
 * @returns weight of cement [N]
 * Formula: C = c y
 * Valid: a bag proportioned as ready-mixed concrete is. Outside: no bag was found that prints its cement.
 * Source: cement-content, bag-yields
 * Checked by: tests/external/cement-content/check.test.ts
 */
export function cementInBag({ perVolume, yield: each }: Inputs): Newtons {
  return newtons(perVolume * each)
}

/** Cement in a bag, with its work shown. */
export const workedCementInBag = showing({
  id: 'cement-in-bag',
  quantity: 'weight',
  formula: 'C = c\\,y',
  terms: { perVolume: ['c', 'unitWeight'], yield: ['y', 'volume'] },
  sources: ['cement-content', 'bag-yields'],
  of: cementInBag,
})
