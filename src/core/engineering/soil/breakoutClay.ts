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

type RatioInputs = Readonly<{ strength: Pascals; width: Metres; length: Metres }>

/**
 * Depth ratio past which breakout in clay is deep.
 * @param strength undrained shear strength cu [Pa]
 * @param width lesser side [m]
 * @param length greater side [m]
 * @returns critical ratio of a square [1] and of the rectangle [1]
 * Formula: Rcr = 0.107 cu(kPa) + 2.5 <= 7; Rcr,rect = Rcr (0.73 + 0.27 L/B) <= 1.55 Rcr
 * Valid: intact clay. Outside: stiff clay reaches the caps.
 * Source: das-1978
 * Checked by: tests/external/das-1978/check.test.ts
 */
export function criticalRatioClay({ strength, width, length }: RatioInputs): Readonly<{ square: number; rectangle: number }> {
  const square = Math.min(7, 0.107 * (strength / 1000) + 2.5)
  return { square, rectangle: Math.min(1.55 * square, square * (0.73 + (0.27 * length) / width)) }
}

type RectangleInputs = Readonly<{
  width: Metres
  length: Metres
  depth: Metres
  strength: Pascals
  unitWeight: UnitWeight
  chartFactor: number
}>

/**
 * Ultimate breakout of a rectangular plate in clay with the chart factor read by a person.
 * @param width lesser side B [m]
 * @param length greater side L [m]
 * @param depth of the plate below grade [m]
 * @param strength undrained shear strength cu [Pa]
 * @param unitWeight of the soil over the plate [N/m3]
 * @param chartFactor beta' from the chart for (Df/B)/Rcr [1], 0 to 1
 * @returns ultimate breakout [N]
 * Formula: Qu = B L {beta' (7.56 + 1.44 B/L) cu + g Df}
 * Valid: chart factor read from the chart, which is not held here. Outside: use the other clay form.
 * Source: das-1978
 * Checked by: tests/external/das-1978/check.test.ts
 */
export function breakoutClayRectangle({ width, length, depth, strength, unitWeight, chartFactor }: RectangleInputs): Newtons {
  return newtons(width * length * (chartFactor * (7.56 + (1.44 * width) / length) * strength + unitWeight * depth))
}

/** Breakout factor in clay, with its work shown. */
export const workedBreakoutFactorClay = showing({
  id: 'breakout-factor-clay',
  quantity: 'ratio',
  formula: ({ strip }: FactorInputs) => (strip ? String.raw`F_c = 0.6\,D_f/B \le 8` : String.raw`F_c = 1.2\,D_f/B \le 9`),
  terms: { depth: ['D_f', 'length'], width: ['B', 'length'] },
  sources: ['meyerhof-1973'],
  of: breakoutFactorClay,
})

/** Breakout of a rectangle in clay, with its work shown. */
export const workedBreakoutClayRectangle = showing({
  id: 'breakout-clay-rectangle',
  quantity: 'force',
  formula: String.raw`Q_u = BL\left\{\beta'\left(7.56 + 1.44\tfrac{B}{L}\right)c_u + \gamma D_f\right\}`,
  terms: {
    width: ['B', 'length'],
    length: ['L', 'length'],
    chartFactor: [String.raw`\beta'`, 'ratio'],
    strength: ['c_u', 'pressure'],
    unitWeight: [String.raw`\gamma`, 'unitWeight'],
    depth: ['D_f', 'length'],
  },
  sources: ['das-1978'],
  of: breakoutClayRectangle,
})

/** Critical depth ratio of a rectangle in clay, with its work shown. */
export const workedCriticalRatioClay = showing({
  id: 'critical-ratio-clay',
  quantity: 'ratio',
  formula: String.raw`R_{cr} = (0.107\,c_u(\mathrm{kPa}) + 2.5)\left(0.73 + 0.27\tfrac{L}{B}\right)`,
  terms: { strength: ['c_u', 'pressure'], width: ['B', 'length'], length: ['L', 'length'] },
  sources: ['das-1978'],
  of: (inputs: RatioInputs) => criticalRatioClay(inputs).rectangle,
})
