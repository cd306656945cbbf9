import type { CubicMetres, Newtons, UnitWeight } from '../../units/quantity.ts'
import { type Cited, cited } from '../cited.ts'
import type { Standing } from '../../model/worked.ts'

/** One bag: its weight, volume of mixed concrete, printed bags per cubic yard, and water to mix it. */
export type Bag = Readonly<{
  weight: Cited<Newtons>
  yield: Cited<CubicMetres>
  perYard: number
  water: Readonly<{ low: Cited<CubicMetres>; high: Cited<CubicMetres> }> | null
}>
const bag = (weight: number, volume: number, perYard: number, water: readonly [number, number] | null, standing: Standing): Bag => ({
  weight: cited<Newtons>(weight, 'lb', 'bag-yields', 'secondary'),
  yield: cited<CubicMetres>(volume, 'ft3', 'bag-yields', standing),
  perYard,
  water: water && {
    low: cited<CubicMetres>(water[0], 'qt', 'bag-yields', standing === 'secondary' ? 'secondary' : 'from memory'),
    high: cited<CubicMetres>(water[1], 'qt', 'bag-yields', standing === 'secondary' ? 'secondary' : 'from memory'),
  },
})
/** Bags of concrete mix: lb, ft3 each, bags per yd3, qt of water. The 50 lb row is by proportion. Source: bag-yields. */
export const bags: Readonly<Record<40 | 50 | 60 | 80, Bag>> = {
  40: bag(40, 0.3, 90, null, 'secondary'),
  50: bag(50, 0.375, 72, [2, 2.75], 'computed here'),
  60: bag(60, 0.45, 60, [2, 3.5], 'secondary'),
  80: bag(80, 0.6, 45, [3, 4.5], 'secondary'),
}

/** Sizes that an input offers [lb]. */
export const bagSizes = [50, 60, 80] as const

/** Dry mix that makes one volume of mixed concrete, 133.3 lb/ft3. Source: bag-yields. */
export const dryMixPerVolume = cited<UnitWeight>(133.3, 'pcf', 'bag-yields', 'secondary')
