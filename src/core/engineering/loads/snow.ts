import { type Pascals, pascals } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

const factor = (printed: number) => cited(printed, '1', 'asce-7-16-7', 'secondary')
/** Thermal factor: heated, and open or unheated. Exposure factor in terrain B: fully, partly, sheltered. Source: asce-7-16-7. */
export const snowFactors = {
  thermal: { heated: factor(1), openOrUnheated: factor(1.2) },
  exposure: { full: factor(0.9), partial: factor(1), sheltered: factor(1.2) },
  leastCap: cited<Pascals>(20, 'psf', 'asce-7-16-7', 'secondary'),
} as const

type Inputs = Readonly<{ ground: Pascals; exposure: number; thermal: number; importance: number; lowSlope: boolean }>

/**
 * Flat roof snow load.
 * @param ground snow load pg [Pa], non-negative
 * @param exposure factor Ce [1]
 * @param thermal factor Ct [1]
 * @param importance factor Is [1]
 * @param lowSlope true for a low-slope roof, which has a least load [1]
 * @returns roof snow load pf [Pa]
 * Formula: pf = 0.7 Ce Ct Is pg; low slope at least Is min(pg, 20 psf)
 * Valid: no drifts, no sliding snow. Outside: those need their own look.
 * Source: asce-7-16-7
 * Checked by: tests/external/asce-7-16-7/check.test.ts
 */
export function flatRoofSnow({ ground, exposure, thermal, importance, lowSlope }: Inputs): Pascals {
  const flat = 0.7 * exposure * thermal * importance * ground
  return pascals(lowSlope ? Math.max(flat, importance * Math.min(ground, snowFactors.leastCap.value)) : flat)
}

/** Flat roof snow, with its work shown. */
export const workedFlatRoofSnow = showing({
  id: 'flat-roof-snow',
  quantity: 'pressure',
  formula: 'p_f = 0.7\\,C_e C_t I_s p_g',
  terms: { exposure: ['C_e', 'ratio'], thermal: ['C_t', 'ratio'], importance: ['I_s', 'ratio'], ground: ['p_g', 'pressure'] },
  sources: ['asce-7-16-7'],
  of: flatRoofSnow,
})
