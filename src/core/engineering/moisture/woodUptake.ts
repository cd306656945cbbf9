import { type CubicMetres, cubicMetres } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

/** Specific gravity of the wall substance of wood. Source: wood-handbook-4. */
export const cellWallGravity = cited(1.54, '1', 'wood-handbook-4', 'from memory')

type GreatestInputs = Readonly<{ gravity: number }>

/**
 * Greatest moisture content that wood can hold, every cavity full.
 * @param gravity specific gravity, oven-dry mass over green volume [1], 0 to 1.54
 * @returns water by mass of dry wood [1]
 * Formula: M = (1.54 - G)/(1.54 G)
 * Valid: any wood. Outside: none.
 * Source: wood-handbook-4
 * Checked by: tests/external/water-and-time-examples/check.test.ts
 */
export function greatestMoisture({ gravity }: GreatestInputs): number {
  const wall = cellWallGravity.value
  return (wall - gravity) / (wall * gravity)
}

type TakenInputs = Readonly<{ volume: CubicMetres; gravity: number; before: number; now: number }>

/**
 * Water that a length of post takes up between two moisture contents.
 * @param volume of wood [m3], non-negative
 * @param gravity specific gravity, oven-dry mass over green volume [1]
 * @param before moisture at first, water by mass of dry wood [1]
 * @param now moisture later [1]
 * @returns water [m3]; negative when the wood dries
 * Formula: V_w = V G (M2 - M1)
 * Valid: even moisture. Outside: how fast it happens in concrete was not found measured.
 * Source: definition
 * Checked by: tests/external/water-and-time-examples/check.test.ts
 */
export function waterTakenUp({ volume, gravity, before, now }: TakenInputs): CubicMetres {
  return cubicMetres(volume * gravity * (now - before))
}

/** Greatest moisture content, with its work shown. */
export const workedGreatestMoisture = showing({
  id: 'greatest-moisture',
  quantity: 'ratio',
  formula: String.raw`M = \frac{1.54 - G}{1.54\,G}`,
  terms: { gravity: ['G', 'ratio'] },
  sources: ['wood-handbook-4'],
  of: greatestMoisture,
})

/** Water taken up by a length of post, with its work shown. */
export const workedWaterTakenUp = showing({
  id: 'water-taken-up',
  quantity: 'volume',
  formula: String.raw`V_w = V\,G\,(M_2 - M_1)`,
  terms: { volume: ['V', 'volume'], gravity: ['G', 'ratio'], now: ['M_2', 'ratio'], before: ['M_1', 'ratio'] },
  sources: ['definition'],
  of: waterTakenUp,
})
