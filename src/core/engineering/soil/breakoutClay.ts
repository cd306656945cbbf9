import { type Metres, type Newtons, type Pascals, type SquareMetres, type UnitWeight, newtons } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

type FactorInputs = Readonly<{ depth: Metres; width: Metres; strip: boolean }>

/**
 * Breakout factor of a buried plate in clay, undrained.
 * @param depth of the plate below grade [m]
 * @param width lesser side, or diameter [m], positive
 * @param strip true for a long strip [1]
 * @returns Fc [1]
 * Formula: Fc = 1.2 Df/B <= 9 (circle, square); 0.6 Df/B <= 8 (strip)
 * Valid: intact clay. Outside: fissured clay may give a third; suction under the base is never counted.
 * Source: meyerhof-1973
 * Checked by: tests/external/meyerhof-1973/check.test.ts
 */
export function breakoutFactorClay({ depth, width, strip }: FactorInputs): number {
  return strip ? Math.min(8, (0.6 * depth) / width) : Math.min(9, (1.2 * depth) / width)
}

type Inputs = Readonly<{ area: SquareMetres; unitWeight: UnitWeight; depth: Metres; strength: Pascals; fc: number }>

/**
 * Ultimate breakout of a buried plate in clay, undrained. Weight over the plate is already inside.
 * @param area of the plate [m2]
 * @param unitWeight of the soil over the plate [N/m3]
 * @param depth of the plate below grade [m]
 * @param strength undrained shear strength cu [Pa]
 * @param fc breakout factor [1]
 * @returns ultimate breakout [N]
 * Formula: Qu = A (g Df + cu Fc)
 * Valid: as the factor. Outside: never add weight, friction or a cone of the same soil.
 * Source: meyerhof-1973
 * Checked by: tests/external/meyerhof-1973/check.test.ts
 */
export function breakoutClay({ area, unitWeight, depth, strength, fc }: Inputs): Newtons {
  return newtons(area * (unitWeight * depth + strength * fc))
}

/** Ultimate breakout in clay, with its work shown. */
export const workedBreakoutClay = showing({
  id: 'breakout-clay',
  quantity: 'force',
  formula: String.raw`Q_u = A(\gamma D_f + c_u F_c)`,
  terms: {
    area: ['A', 'area'],
    unitWeight: [String.raw`\gamma`, 'unitWeight'],
    depth: ['D_f', 'length'],
    strength: ['c_u', 'pressure'],
    fc: ['F_c', 'ratio'],
  },
  sources: ['meyerhof-1973'],
  of: breakoutClay,
})

/** Breakout factor in clay, with its work shown. */
export const workedBreakoutFactorClay = showing({
  id: 'breakout-factor-clay',
  quantity: 'ratio',
  formula: ({ strip }: FactorInputs) => (strip ? String.raw`F_c = 0.6\,D_f/B \le 8` : String.raw`F_c = 1.2\,D_f/B \le 9`),
  terms: { depth: ['D_f', 'length'], width: ['B', 'length'] },
  sources: ['meyerhof-1973'],
  of: breakoutFactorClay,
})
