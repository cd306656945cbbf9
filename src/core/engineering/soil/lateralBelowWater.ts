import { type Pascals, type PressureGradient, pressureGradient } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

type Inputs = Readonly<{ gradient: PressureGradient; effective: Pascals; moist: Pascals }>

/**
 * Presumptive lateral bearing per depth in ground that stands in water: taken down as its effective stress is.
 * @param gradient presumptive lateral bearing per depth [Pa/m], positive
 * @param effective vertical stress at the foot of the embedment, buoyant below water [Pa]
 * @param moist vertical stress there without water [Pa], positive
 * @returns lateral bearing per depth [Pa/m]
 * Formula: Lt' = Lt max(0, min(1, s'v/sv))
 * Valid: the code is silent on water; a careful reading, about half in ground that is all wet. Outside: never more than the table gives, never below nothing.
 * Source: computed-here
 * Checked by: tests/external/ibc-1807-3-2-1/water.test.ts
 */
export function lateralBelowWater({ gradient, effective, moist }: Inputs): PressureGradient {
  return pressureGradient(gradient * (moist > 0 ? Math.max(0, Math.min(1, effective / moist)) : 1))
}

/** Lateral bearing below water, with its work shown. */
export const workedLateralBelowWater = showing({
  id: 'lateral-below-water',
  quantity: 'gradient',
  formula: String.raw`L_t' = L_t\,\min(1,\ \sigma'_v/\sigma_v)`,
  terms: {
    gradient: ['L_t', 'gradient'],
    effective: [String.raw`\sigma'_v`, 'pressure'],
    moist: [String.raw`\sigma_v`, 'pressure'],
  },
  sources: ['computed-here'],
  of: lateralBelowWater,
})
