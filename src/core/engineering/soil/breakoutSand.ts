import { type Metres, type Newtons, type Radians, type SquareMetres, type UnitWeight, newtons } from '../../units/quantity.ts'
import { toPrinted } from '../cited.ts'
import { interpolate } from '../interpolate.ts'
import { showing } from '../showing.ts'
import { type BreakoutRow, breakoutFactors } from '../tables/breakoutFactors.ts'

const column = (pick: (row: BreakoutRow) => number) => breakoutFactors.map((row) => [row.degrees, pick(row)] as const)
const columns = { ku: column((row) => row.ku), m: column((row) => row.m), criticalRatio: column((row) => row.criticalRatio) }

type FactorInputs = Readonly<{ width: Metres; length: Metres; depth: Metres; frictionAngle: Radians; round: boolean }>
export type BreakoutFactor = Readonly<{ ratio: number; criticalRatio: number; deep: boolean; ku: number; m: number; fq: number }>

/**
 * Breakout factor of a buried plate in sand.
 * @param width lesser side, or diameter [m], positive
 * @param length greater side [m], not less than `width`; ignored when round
 * @param depth of the plate's top below grade [m]
 * @param frictionAngle of the soil over the plate [rad], 0.35 to 0.79 (20 to 45 degrees)
 * @param round true for a circle or a square [1]
 * @returns R = Df/B [1], its critical value [1], whether deep, Ku [1], m [1] and Fq [1]; null outside the table of angles
 * Formula: Fq = 1 + 2 (1 + m R) R Ku tan phi (round); 1 + {(1 + 2 m R) B/L + 1} R Ku tan phi (rectangular); R no more than Rcr
 * Valid: soil as placed over the plate; past 38 degrees not credible in an augered hole. Outside: no value below 20 or above 45 degrees.
 * Source: meyerhof-adams-1968, das-foundation-engineering
 * Checked by: tests/external/meyerhof-adams-1968/check.test.ts
 */
export function breakoutFactorSand({ width, length, depth, frictionAngle, round }: FactorInputs): BreakoutFactor | null {
  // Rounded to 1e-9 of a degree so that 20 and 45 degrees, typed, stay inside the table.
  const degrees = Math.round(toPrinted(frictionAngle, 'deg') * 1e9) / 1e9
  const ku = interpolate(columns.ku, degrees)
  const m = interpolate(columns.m, degrees)
  const criticalRatio = interpolate(columns.criticalRatio, degrees)
  if (ku === null || m === null || criticalRatio === null) return null
  const ratio = depth / width
  const used = Math.min(ratio, criticalRatio)
  const pull = used * ku * Math.tan(frictionAngle)
  const fq = round ? 1 + 2 * (1 + m * used) * pull : 1 + ((1 + 2 * m * used) * (width / length) + 1) * pull
  return { ratio, criticalRatio, deep: ratio > criticalRatio, ku, m, fq }
}

type Inputs = Readonly<{ fq: number; unitWeight: UnitWeight; area: SquareMetres; depth: Metres }>

/**
 * Ultimate breakout of a buried plate in sand. Soil and foundation weight over the plate are already inside.
 * @param fq breakout factor [1]
 * @param unitWeight of the soil over the plate, buoyant below water [N/m3]
 * @param area of the plate [m2]
 * @param depth of the plate's top below grade [m]
 * @returns ultimate breakout [N]
 * Formula: Qu = Fq g A Df
 * Valid: as the factor. Outside: never add weight, friction or a cone of the same soil.
 * Source: meyerhof-adams-1968
 * Checked by: tests/external/meyerhof-adams-1968/check.test.ts
 */
export function breakoutSand({ fq, unitWeight, area, depth }: Inputs): Newtons {
  return newtons(fq * unitWeight * area * depth)
}

/** Breakout factor, with its work shown. */
export const workedBreakoutFactorSand = showing({
  id: 'breakout-factor-sand',
  quantity: 'ratio',
  formula: ({ round }: FactorInputs) =>
    round
      ? String.raw`F_q = 1 + 2(1 + mR)\,R K_u\tan\varphi,\quad R = D_f/B \le R_{cr}`
      : String.raw`F_q = 1 + \left[(1+2mR)\tfrac{B}{L} + 1\right] R K_u\tan\varphi`,
  terms: { depth: ['D_f', 'length'], width: ['B', 'length'], length: ['L', 'length'], frictionAngle: [String.raw`\varphi`, 'angle'] },
  along: (inputs: FactorInputs) => {
    const found = breakoutFactorSand(inputs)
    if (!found) return []
    return [
      { symbol: 'R', name: 'depthRatio', value: Math.min(found.ratio, found.criticalRatio), quantity: 'ratio' },
      { symbol: 'm', name: 'shapeTerm', value: found.m, quantity: 'ratio' },
      { symbol: 'K_u', name: 'upliftCoefficient', value: found.ku, quantity: 'ratio' },
    ]
  },
  sources: ['meyerhof-adams-1968', 'das-foundation-engineering'],
  of: (inputs: FactorInputs) => breakoutFactorSand(inputs)?.fq ?? null,
})

/** Ultimate breakout in sand, with its work shown. */
export const workedBreakoutSand = showing({
  id: 'breakout-sand',
  quantity: 'force',
  formula: String.raw`Q_u = F_q\,\gamma\,A\,D_f`,
  terms: { fq: ['F_q', 'ratio'], unitWeight: [String.raw`\gamma`, 'unitWeight'], area: ['A', 'area'], depth: ['D_f', 'length'] },
  sources: ['meyerhof-adams-1968'],
  of: breakoutSand,
})
