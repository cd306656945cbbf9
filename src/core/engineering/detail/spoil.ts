import { type CubicMetres, cubicMetres } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

type Inputs = Readonly<{ bank: CubicMetres; swell: number }>

/**
 * Loose volume of what was dug.
 * @param bank volume in the ground [m3], non-negative
 * @param swell loose over bank [1], 1 or more
 * @returns loose volume [m3]
 * Formula: V_loose = S V_bank
 * Valid: freshly dug. Outside: it settles again with time.
 * Source: fm-5-434
 * Checked by: tests/external/fm-5-434/check.test.ts
 */
export function looseSpoil({ bank, swell }: Inputs): CubicMetres {
  return cubicMetres(bank * swell)
}

/** Loose spoil, with its work shown. */
export const workedLooseSpoil = showing({
  id: 'loose-spoil',
  quantity: 'volume',
  formula: String.raw`V_{loose} = S\,V_{bank}`,
  terms: { swell: ['S', 'ratio'], bank: ['V_{bank}', 'volume'] },
  sources: ['fm-5-434'],
  of: looseSpoil,
})

type DensityInputs = Readonly<{ bankDensity: number; looseDensity: number }>

/**
 * Swell from two densities.
 * @param bankDensity mass per volume in the ground [kg/m3], positive
 * @param looseDensity mass per volume once dug [kg/m3], positive
 * @returns swell, loose over bank volume [1]
 * Formula: S = rho_bank/rho_loose
 * Valid: both dry, or both at the same moisture. Outside: none.
 * Source: definition
 * Checked by: tests/external/fm-5-434/check.test.ts
 */
export function swellFromDensities({ bankDensity, looseDensity }: DensityInputs): number {
  return bankDensity / looseDensity
}

/** Swell from two densities, with its work shown. */
export const workedSwellFromDensities = showing({
  id: 'swell-from-densities',
  quantity: 'ratio',
  formula: String.raw`S = \rho_{bank}/\rho_{loose}`,
  terms: {},
  sources: ['definition'],
  of: swellFromDensities,
})
