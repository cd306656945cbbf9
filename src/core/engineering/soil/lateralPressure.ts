import { type Metres, type Pascals, type PressureGradient, pascals } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'
import { lateralDepthCap } from '../tables/soils.ts'

/** Multiplier for isolated poles that may move 1/2 in at the ground under short-term load. A user's choice, lateral only. Source: ibc-1806-3. */
export const poleDoubling = cited(2, '1', 'ibc-1806-3', 'secondary')

type Inputs = Readonly<{ gradient: PressureGradient; multiplier: number; depth: Metres }>

/**
 * Allowable lateral bearing pressure at a depth.
 * @param gradient presumptive lateral bearing per depth [Pa/m], positive
 * @param multiplier 1, or 2 for an isolated pole that may move 1/2 in under short-term load [1]
 * @param depth below grade [m], non-negative
 * @returns allowable pressure [Pa]
 * Formula: p(z) = k Lt min(z, 15 ft)
 * Valid: level ground above water. Outside: from 15 ft down the pressure stays.
 * Source: ibc-1806-3, ibc-1806-2
 * Checked by: tests/external/ibc-1806-2/check.test.ts
 */
export function lateralPressure({ gradient, multiplier, depth }: Inputs): Pascals {
  return pascals(multiplier * gradient * Math.min(depth, lateralDepthCap.value))
}

/** Allowable lateral pressure, with its work shown. */
export const workedLateralPressure = showing({
  id: 'lateral-pressure',
  quantity: 'pressure',
  formula: String.raw`p(z) = k\,L_t\,\min(z,\ 15\ \mathrm{ft})`,
  terms: { multiplier: ['k', 'ratio'], gradient: ['L_t', 'gradient'], depth: ['z', 'length'] },
  sources: ['ibc-1806-2', 'ibc-1806-3'],
  of: lateralPressure,
})
