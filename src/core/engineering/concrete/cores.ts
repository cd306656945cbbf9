import { type Pascals, pascals } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { interpolate } from '../interpolate.ts'
import { showing } from '../showing.ts'

/** Cores are acceptable from these shares of the specified strength on: mean of three, and each. Source: aci-318-19-26-12-6. */
export const coreLimits = {
  mean: cited(0.85, '1', 'aci-318-19-26-12-6', 'secondary'),
  each: cited(0.75, '1', 'aci-318-19-26-12-6', 'secondary'),
} as const

/** Strength factor by length over diameter of a core. Source: astm-c42. */
export const coreShapeFactors: readonly (readonly [ratio: number, factor: number])[] = [
  [1, 0.87],
  [1.25, 0.93],
  [1.5, 0.96],
  [1.75, 0.98],
  [2, 1],
]

/**
 * Strength factor for a short core.
 * @param ratio length over diameter [1], 1 to 2
 * @returns factor [1]; null outside the table
 * Formula: straight line between 1.00: 0.87, 1.25: 0.93, 1.50: 0.96, 1.75: 0.98, 2.00: 1.00
 * Valid: 1 to 2. Outside: no value.
 * Source: astm-c42
 * Checked by: tests/external/astm-c42/check.test.ts
 */
export function coreShapeFactor(ratio: number): number | null {
  return interpolate(coreShapeFactors, ratio)
}

type Inputs = Readonly<{ cores: readonly Pascals[]; specified: Pascals }>
export type CoreVerdict = Readonly<{ mean: Pascals; meanPercent: number; leastPercent: number; meets: boolean }>

/**
 * Core acceptance, with the percentages rounded as the code writes its limits.
 * @param cores corrected strengths of three cores or more [Pa]; shape [n]
 * @param specified strength f'c [Pa], positive
 * @returns mean [Pa], mean and least as percent of f'c [1], and whether both are not below the limits; null for fewer than three
 * Formula: round(100 mean/f'c) >= 85 and round(100 least/f'c) >= 75
 * Valid: three cores from one place in doubt. Outside: no value.
 * Source: aci-318-19-26-12-6
 * Checked by: tests/external/aci-318-19-26-12-6/check.test.ts
 */
export function coreAcceptance({ cores, specified }: Inputs): CoreVerdict | null {
  if (cores.length < 3) return null
  const mean = cores.reduce((sum, core) => sum + core, 0) / cores.length
  const meanPercent = (100 * mean) / specified
  const leastPercent = (100 * Math.min(...cores)) / specified
  const meets = Math.round(meanPercent) >= 100 * coreLimits.mean.value && Math.round(leastPercent) >= 100 * coreLimits.each.value
  return { mean: pascals(mean), meanPercent, leastPercent, meets }
}

/** Factor of a short core, with its work shown. */
export const workedCoreShapeFactor = showing({
  id: 'core-shape-factor',
  quantity: 'ratio',
  formula: 'k(L/D)',
  terms: { ratio: ['L/D', 'ratio'] },
  sources: ['astm-c42'],
  of: ({ ratio }: Readonly<{ ratio: number }>) => coreShapeFactor(ratio),
})

/** Mean of the cores as a share of the specified strength, with its work shown. */
export const workedCoreMean = showing({
  id: 'core-mean',
  quantity: 'ratio',
  formula: String.raw`\bar f / f'_c \ge 0.85`,
  terms: { specified: ["f'_c", 'strength'] },
  sources: ['aci-318-19-26-12-6'],
  of: (inputs: Inputs): number | null => {
    const found = coreAcceptance(inputs)
    return found && found.meanPercent / 100
  },
})
