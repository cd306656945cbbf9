import { type Metres, metres } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

/** Constant of the grain-size rule [m2]: 0.1 to 0.5 cm2 by shape and cleanness of the grains. Source: capillary-rise-by-grain. */
export const riseConstant = {
  low: cited(0.1, 'cm2', 'capillary-rise-by-grain', 'from memory'),
  high: cited(0.5, 'cm2', 'capillary-rise-by-grain', 'from memory'),
} as const

type RiseInputs = Readonly<{ constant: number; voidRatio: number; grain: Metres }>

/**
 * Height that water rises above the water table, from grain size.
 * @param constant C [m2], 1e-5 to 5e-5
 * @param voidRatio voids over solids [1], positive
 * @param grain effective size, 10 % finer [m], positive
 * @returns height [m]
 * Formula: h = C/(e D10)
 * Valid: sands. Outside: far too high for silt and clay.
 * Source: capillary-rise-by-grain
 * Checked by: tests/core/engineering/moisture/soilWetness.test.ts
 */
export function capillaryRiseOfGrain({ constant, voidRatio, grain }: RiseInputs): Metres {
  return metres(constant / (voidRatio * grain))
}

type FringeInputs = Readonly<{ waterTable: Metres; rise: Metres }>

/**
 * Depth below grade of the top of the ground that water rises into.
 * @param waterTable depth below grade [m], non-negative
 * @param rise height that water rises [m], non-negative
 * @returns depth below grade [m], zero where it reaches the surface
 * Formula: z = max(0, zw - h)
 * Valid: still water. Outside: none.
 * Source: definition
 * Checked by: tests/core/engineering/moisture/soilWetness.test.ts
 */
export function fringeTop({ waterTable, rise }: FringeInputs): Metres {
  return metres(Math.max(0, waterTable - rise))
}

/** Depth of the top of the capillary fringe, with its work shown. */
export const workedFringeTop = showing({
  id: 'fringe-top',
  quantity: 'length',
  formula: String.raw`z = \max(0,\ z_w - h)`,
  terms: { waterTable: ['z_w', 'length'], rise: ['h', 'length'] },
  sources: ['definition'],
  of: fringeTop,
})

/** Capillary rise from grain size, with its work shown. */
export const workedCapillaryRiseOfGrain = showing({
  id: 'capillary-rise-of-grain',
  quantity: 'length',
  formula: String.raw`h = \frac{C}{e\,D_{10}}`,
  terms: { constant: ['C', 'area'], voidRatio: ['e', 'ratio'], grain: ['D_{10}', 'length'] },
  sources: ['capillary-rise-by-grain'],
  of: capillaryRiseOfGrain,
})
