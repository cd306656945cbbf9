import { type Metres, type Newtons, type Pascals, type Radians, newtons } from '../../units/quantity.ts'
import { toPrinted } from '../cited.ts'
import type { Term } from '../../model/worked.ts'
import { showing } from '../showing.ts'

export type YieldMode = 'Im' | 'Is' | 'II' | 'IIIm' | 'IIIs' | 'IV'
export type YieldInputs = Readonly<{
  diameter: Metres
  /** Bearing length in the main member, and in each side member. */
  main: Metres
  side: Metres
  mainBearing: Pascals
  sideBearing: Pascals
  bendingYield: Pascals
  /** Largest angle between load and grain in any wood member. */
  angle: Radians
  planes: 'single' | 'double'
}>
export type YieldResult = Readonly<{
  /** Reference value of each mode, one dowel, both planes together in double shear. II and IIIm do not happen there. */
  modes: Readonly<Partial<Record<YieldMode, Newtons>>>
  governing: YieldMode
  value: Newtons
  terms: Readonly<{
    re: number
    rt: number
    k1: number
    k2: number
    k3: number
    angleFactor: number
    reduction: Readonly<Record<YieldMode, number>>
  }>
}>

/**
 * Reference lateral value of one dowel by the yield limit equations, every mode.
 * @param diameter of the dowel, full body [m], up to 0.0254
 * @param main bearing length in the main member lm [m], positive
 * @param side bearing length in each side member ls [m], positive
 * @param mainBearing dowel bearing strength of the main member Fem [Pa], positive
 * @param sideBearing dowel bearing strength of the side member Fes [Pa], positive
 * @param bendingYield bending yield strength of the dowel Fyb [Pa], positive
 * @param angle largest angle between load and grain [rad], 0 to 1.571
 * @param planes 'single' or 'double' shear [1]
 * @returns value of each mode [N], the governing one and its value [N], and the terms [1]; null for a dowel over 1 in or a length that is not positive
 * Formula: Im = D lm Fem/Rd; Is = D ls Fes/Rd; II = k1 D ls Fes/Rd; IIIm = k2 D lm Fem/((1 + 2Re) Rd); IIIs = k3 D ls Fem/((2 + Re) Rd);
 *   IV = (D^2/Rd) sqrt(2 Fem Fyb/(3(1 + Re))); double shear: Im, 2 Is, 2 IIIs, 2 IV; Re = Fem/Fes, Rt = lm/ls;
 *   k1 = [sqrt(Re + 2Re^2(1 + Rt + Rt^2) + Rt^2 Re^3) - Re(1 + Rt)]/(1 + Re); k2 = -1 + sqrt(2(1 + Re) + 2Fyb(1 + 2Re)D^2/(3Fem lm^2));
 *   k3 = -1 + sqrt(2(1 + Re)/Re + 2Fyb(2 + Re)D^2/(3Fem ls^2))
 * Valid: members in contact, load square to the dowel, distances and penetration as chapter 12 asks. Outside: no value.
 * Source: nds-2018-12-3-1
 * Checked by: tests/external/nds-2018-tables-12a-12g/check.test.ts
 */
export function yieldValue({
  diameter: d,
  main: lm,
  side: ls,
  mainBearing: fem,
  sideBearing: fes,
  bendingYield: fyb,
  angle,
  planes,
}: YieldInputs): YieldResult | null {
  if (!(lm > 0 && ls > 0 && d > 0) || toPrinted(d, 'in') > 1 + 1e-9) return null
  const re = fem / fes
  const rt = lm / ls
  const angleFactor = 1 + 0.25 * (angle / (Math.PI / 2))
  const reduction = reductionTerms(d, angleFactor)
  const k1 = (Math.sqrt(re + 2 * re ** 2 * (1 + rt + rt ** 2) + rt ** 2 * re ** 3) - re * (1 + rt)) / (1 + re)
  const k2 = -1 + Math.sqrt(2 * (1 + re) + (2 * fyb * (1 + 2 * re) * d ** 2) / (3 * fem * lm ** 2))
  const k3 = -1 + Math.sqrt((2 * (1 + re)) / re + (2 * fyb * (2 + re) * d ** 2) / (3 * fem * ls ** 2))
  const both = planes === 'double' ? 2 : 1
  const modes: Partial<Record<YieldMode, Newtons>> = {
    Im: newtons((d * lm * fem) / reduction.Im),
    Is: newtons((both * d * ls * fes) / reduction.Is),
    ...(planes === 'single' && {
      II: newtons((k1 * d * ls * fes) / reduction.II),
      IIIm: newtons((k2 * d * lm * fem) / ((1 + 2 * re) * reduction.IIIm)),
    }),
    IIIs: newtons((both * k3 * d * ls * fem) / ((2 + re) * reduction.IIIs)),
    IV: newtons(((both * d ** 2) / reduction.IV) * Math.sqrt((2 * fem * fyb) / (3 * (1 + re)))),
  }
  let governing: YieldMode = 'Im'
  let value = Number.POSITIVE_INFINITY
  for (const mode of order) {
    const found = modes[mode]
    if (found !== undefined && found < value) [governing, value] = [mode, found]
  }
  return { modes, governing, value: newtons(value), terms: { re, rt, k1, k2, k3, angleFactor, reduction } }
}

const order: readonly YieldMode[] = ['Im', 'Is', 'II', 'IIIm', 'IIIs', 'IV']

/** Rd of each mode: 4, 3.6 or 3.2 times the angle factor from 1/4 in on; the nail factor below. */
const reductionTerms = (diameter: Metres, angleFactor: number): Readonly<Record<YieldMode, number>> => {
  const inches = toPrinted(diameter, 'in')
  if (inches < 0.25 * (1 - 1e-9)) {
    const nail = inches <= 0.17 ? 2.2 : 10 * inches + 0.5
    return { Im: nail, Is: nail, II: nail, IIIm: nail, IIIs: nail, IV: nail }
  }
  const bend = 3.2 * angleFactor
  return { Im: 4 * angleFactor, Is: 4 * angleFactor, II: 3.6 * angleFactor, IIIm: bend, IIIs: bend, IV: bend }
}

const formulas: Readonly<Record<'single' | 'double', Readonly<Partial<Record<YieldMode, string>>>>> = {
  single: {
    Im: String.raw`Z = \frac{D\,l_m F_{em}}{R_d}`,
    Is: String.raw`Z = \frac{D\,l_s F_{es}}{R_d}`,
    II: String.raw`Z = \frac{k_1 D\,l_s F_{es}}{R_d}`,
    IIIm: String.raw`Z = \frac{k_2 D\,l_m F_{em}}{(1+2R_e)R_d}`,
    IIIs: String.raw`Z = \frac{k_3 D\,l_s F_{em}}{(2+R_e)R_d}`,
    IV: String.raw`Z = \frac{D^2}{R_d}\sqrt{\frac{2F_{em}F_{yb}}{3(1+R_e)}}`,
  },
  double: {
    Im: String.raw`Z = \frac{D\,l_m F_{em}}{R_d}`,
    Is: String.raw`Z = \frac{2 D\,l_s F_{es}}{R_d}`,
    IIIs: String.raw`Z = \frac{2 k_3 D\,l_s F_{em}}{(2+R_e)R_d}`,
    IV: String.raw`Z = \frac{2D^2}{R_d}\sqrt{\frac{2F_{em}F_{yb}}{3(1+R_e)}}`,
  },
}

/** The terms of a mode that its formula names. */
const alongTheWay = (inputs: YieldInputs, mode: YieldMode | null): readonly Term[] => {
  const found = yieldValue(inputs)
  const named = mode ?? found?.governing
  if (!found || !named) return []
  const { re, k1, k2, k3, reduction } = found.terms
  const term = (symbol: string, name: string, value: number): Term => ({ symbol, name, value, quantity: 'ratio' })
  const all = [
    term('R_d', 'yieldReduction', reduction[named]),
    term('R_e', 'bearingRatio', re),
    term('k_1', 'yieldCoefficient', k1),
    term('k_2', 'yieldCoefficient', k2),
    term('k_3', 'yieldCoefficient', k3),
  ]
  return all.filter(({ symbol }) => formulas[inputs.planes][named]?.includes(symbol))
}

const dowelTerms = {
  diameter: ['D', 'length'],
  main: ['l_m', 'length'],
  side: ['l_s', 'length'],
  mainBearing: ['F_{em}', 'strength'],
  sideBearing: ['F_{es}', 'strength'],
  bendingYield: ['F_{yb}', 'strength'],
} as const

/** One mode's reference value, with its work shown; null where that mode cannot happen. */
export const workedYieldMode = (mode: YieldMode) =>
  showing({
    id: `yield-mode-${mode}`,
    quantity: 'force',
    formula: ({ planes }: YieldInputs) => formulas[planes][mode] ?? '',
    terms: dowelTerms,
    along: (inputs: YieldInputs) => alongTheWay(inputs, mode),
    sources: ['nds-2018-12-3-1'],
    of: (inputs: YieldInputs): number | null => yieldValue(inputs)?.modes[mode] ?? null,
  })

/** The least mode's reference value, with its work shown. */
export const workedYieldValue = showing({
  id: 'yield-value',
  quantity: 'force',
  formula: (inputs: YieldInputs) => formulas[inputs.planes][yieldValue(inputs)?.governing ?? 'IV'] ?? '',
  terms: dowelTerms,
  along: (inputs: YieldInputs) => alongTheWay(inputs, null),
  sources: ['nds-2018-12-3-1'],
  of: (inputs: YieldInputs): number | null => yieldValue(inputs)?.value ?? null,
})
