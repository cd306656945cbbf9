import { type CubicMetres, cubicMetres, type Newtons, type UnitWeight } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

type NeedInputs = Readonly<{ cement: Newtons; share: number; water: UnitWeight }>

/**
 * Water that cement needs to hydrate.
 * @param cement weight [N], non-negative
 * @param share weight of water for each weight of cement [1]: 0.23 bound, 0.42 with the gel
 * @param water unit weight of water [N/m3]
 * @returns water [m3]
 * Formula: V = k C/w
 * Valid: Portland cement. Outside: aggregate takes up water besides.
 * Source: hydration-water
 * Checked by: tests/external/water-and-time-examples/check.test.ts
 */
export function hydrationWater({ cement, share, water }: NeedInputs): CubicMetres {
  return cubicMetres((share * cement) / water)
}

type RatioInputs = Readonly<{ volume: CubicMetres; cement: Newtons; water: UnitWeight }>

/**
 * Water-cement ratio of a bag mixed with a volume of water.
 * @param volume of water [m3], non-negative
 * @param cement weight in the bag [N], positive
 * @param water unit weight of water [N/m3]
 * @returns water over cement by weight [1]
 * Formula: w/c = V w/C
 * Valid: dry aggregate that takes up none. Outside: a wetter or drier aggregate shifts it.
 * Source: definition
 * Checked by: tests/external/water-and-time-examples/check.test.ts
 */
export function waterCement({ volume, cement, water }: RatioInputs): number {
  return (volume * water) / cement
}

/** Water to hydrate, with its work shown. */
export const workedHydrationWater = showing({
  id: 'hydration-water',
  quantity: 'volume',
  formula: 'V = k\\,C/w',
  terms: { share: ['k', 'ratio'], cement: ['C', 'weight'], water: ['w', 'unitWeight'] },
  sources: ['hydration-water'],
  of: hydrationWater,
})

/** Water-cement ratio, with its work shown. */
export const workedWaterCement = showing({
  id: 'water-cement',
  quantity: 'ratio',
  formula: 'w/c = V w/C',
  terms: { volume: ['V', 'volume'], water: ['w', 'unitWeight'], cement: ['C', 'weight'] },
  sources: ['definition'],
  of: waterCement,
})
