import type { Pascals, UnitWeight } from '../../units/quantity.ts'
import { toPrinted } from '../cited.ts'
import { strengthForWaterCement } from '../concrete/waterCement.ts'
import { interpolate } from '../interpolate.ts'
import { showing } from '../showing.ts'
import { strengthByWaterCement } from '../tables/concrete.ts'

/** Ascending in strength, as straight-line interpolation asks. */
const weakestFirst = [...strengthByWaterCement].reverse()
const byStrength = {
  plain: weakestFirst.map((row) => [row.psi, row.plain] as const),
  airEntrained: weakestFirst.flatMap((row) => (row.airEntrained === null ? [] : [[row.psi, row.airEntrained] as const])),
}
type InverseInputs = Readonly<{ strength: Pascals; airEntrained: boolean }>

/**
 * Water-cement ratio that the table pairs with an average 28-day strength.
 * @param strength average at 28 days [Pa]
 * @param airEntrained true for air-entrained concrete [1]
 * @returns water over cement by weight [1]; null outside the table
 * Formula: straight line between the rows of the table
 * Valid: 2000 to 6000 psi without air, 2000 to 5000 with. Outside: no value.
 * Source: aci-211-1
 * Checked by: tests/external/aci-211-1/water.test.ts
 */
export function waterCementForStrength({ strength, airEntrained }: InverseInputs): number | null {
  return interpolate(airEntrained ? byStrength.airEntrained : byStrength.plain, toPrinted(strength, 'psi'))
}

type AddedInputs = Readonly<{ ratio: number; cement: UnitWeight; added: number; water: UnitWeight }>

/**
 * Water-cement ratio after water was added at the site.
 * @param ratio water over cement by weight as delivered [1]
 * @param cement weight in a volume of concrete [N/m3], positive
 * @param added volume of water for each volume of concrete [m3/m3], non-negative
 * @param water unit weight of water [N/m3]
 * @returns water over cement by weight [1]
 * Formula: (w/c)' = w/c + v w/c_v
 * Valid: mixed in again. Outside: the delivery ticket says what may be added, and that it is signed for.
 * Source: definition
 * Checked by: tests/external/aci-211-1/water.test.ts
 */
export function ratioWithAdded({ ratio, cement, added, water }: AddedInputs): number {
  return ratio + (added * water) / cement
}

type LossInputs = AddedInputs & Readonly<{ airEntrained: boolean }>

/**
 * Average 28-day strength left after water was added, over that as delivered.
 * @param ratio water over cement by weight as delivered [1]
 * @param cement weight in a volume of concrete [N/m3], positive
 * @param added volume of water for each volume of concrete [m3/m3], non-negative
 * @param water unit weight of water [N/m3]
 * @param airEntrained true for air-entrained concrete [1]
 * @returns share left [1]; null where either ratio is outside the table
 * Formula: f[(w/c)']/f(w/c) by the table
 * Valid: inside the table. Outside: no value.
 * Source: aci-211-1
 * Checked by: tests/external/aci-211-1/water.test.ts
 */
export function strengthLeft({ airEntrained, ...inputs }: LossInputs): number | null {
  const before = strengthForWaterCement({ ratio: inputs.ratio, airEntrained })
  const after = strengthForWaterCement({ ratio: ratioWithAdded(inputs), airEntrained })
  return before === null || after === null ? null : after / before
}

const terms = {
  ratio: ['w/c', 'ratio'],
  added: ['v', 'ratio'],
  water: ['w', 'unitWeight'],
  cement: ['c_v', 'unitWeight'],
} as const

/** Water-cement ratio with water added, with its work shown. */
export const workedRatioWithAdded = showing({
  id: 'ratio-with-added',
  quantity: 'ratio',
  formula: String.raw`(w/c)' = w/c + \frac{v\,w}{c_v}`,
  terms,
  sources: ['definition'],
  of: ratioWithAdded,
})

/** Strength left, with its work shown. */
export const workedStrengthLeft = showing({
  id: 'strength-left',
  quantity: 'ratio',
  formula: String.raw`\frac{f[(w/c)']}{f(w/c)}`,
  terms,
  sources: ['aci-211-1'],
  of: strengthLeft,
})
