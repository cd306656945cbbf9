import type { MetresPerSecond } from '../../units/quantity.ts'
import { cited } from '../cited.ts'

/** Hydraulic conductivity of mature, uncracked concrete [m/s]: best and worst named. Source: concrete-conductivity. */
export const concreteConductivity = {
  low: cited<MetresPerSecond>(1e-14, 'm/s', 'concrete-conductivity', 'secondary'),
  high: cited<MetresPerSecond>(1e-12, 'm/s', 'concrete-conductivity', 'secondary'),
} as const
