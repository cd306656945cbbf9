import { type CubicMetres, type Newtons, type UnitWeight, newtons } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

type Inputs = Readonly<{ dry: UnitWeight; saturated: UnitWeight; water: UnitWeight; above: CubicMetres; below: CubicMetres }>

/**
 * Weight that a body still has when its lower part stands under water.
 * @param dry unit weight above the water [N/m3], positive
 * @param saturated unit weight with its voids full of water [N/m3]; same as `dry` where water does not enter
 * @param water unit weight of water [N/m3], positive
 * @param above volume above the water table [m3], non-negative
 * @param below volume below the water table [m3], non-negative
 * @returns effective weight [N]; negative for a body that floats
 * Formula: W' = gc Va + (gsat - gw) Vb, gc = dry, gsat = saturated, gw = water
 * Valid: still water, full pressure under the base. Outside: uplift by flowing water is not covered.
 * Source: statics
 * Checked by: tests/external/statics/check.test.ts
 */
export function buoyantWeight({ dry, saturated, water, above, below }: Inputs): Newtons {
  return newtons(dry * above + (saturated - water) * below)
}

/** Effective weight, with its work shown. */
export const workedBuoyantWeight = showing({
  id: 'buoyant-weight',
  quantity: 'weight',
  formula: String.raw`W' = \gamma V_a + (\gamma_{sat} - \gamma_w) V_b`,
  terms: {
    dry: [String.raw`\gamma`, 'unitWeight'],
    saturated: [String.raw`\gamma_{sat}`, 'unitWeight'],
    water: [String.raw`\gamma_w`, 'unitWeight'],
    above: ['V_a', 'volume'],
    below: ['V_b', 'volume'],
  },
  sources: ['statics'],
  of: buoyantWeight,
})
