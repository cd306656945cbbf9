import { showing } from '../showing.ts'

export type Cement = 'I' | 'III'
export type CuringMethod = 'moist' | 'steam'
/** Constants a [days] and b [1] of strength gain. Source: aci-209r-92. */
export const strengthGainConstants: Readonly<Record<CuringMethod, Readonly<Record<Cement, Readonly<{ a: number; b: number }>>>>> = {
  moist: { I: { a: 4, b: 0.85 }, III: { a: 2.3, b: 0.92 } },
  steam: { I: { a: 1, b: 0.95 }, III: { a: 0.7, b: 0.98 } },
}

type Inputs = Readonly<{ days: number; a: number; b: number }>

/**
 * Share of the 28-day strength that concrete has at an age.
 * @param days age [d], non-negative, at the reference temperature
 * @param a constant [d]: 4 for moist-cured Type I
 * @param b constant [1]: 0.85 for moist-cured Type I
 * @returns share of the 28-day strength [1]; 1.007 at 28 days for Type I, not 1
 * Formula: f(t)/f28 = t/(a + b t)
 * Valid: mixed concrete, moist. Outside: dry-placed mix has no such curve.
 * Source: aci-209r-92
 * Checked by: tests/external/aci-209r-92/check.test.ts
 */
export function strengthShare({ days, a, b }: Inputs): number {
  return days / (a + b * days)
}

type AgeInputs = Readonly<{ share: number; a: number; b: number }>

/**
 * Age at which a share of the 28-day strength is reached.
 * @param share of the 28-day strength [1], non-negative
 * @param a constant [d]
 * @param b constant [1]
 * @returns age [d]; null when the curve never gets there
 * Formula: t = a s/(1 - b s)
 * Valid: s < 1/b. Outside: no value.
 * Source: aci-209r-92
 * Checked by: tests/external/aci-209r-92/check.test.ts
 */
export function ageForShare({ share, a, b }: AgeInputs): number | null {
  const rest = 1 - b * share
  return rest > 0 ? (a * share) / rest : null
}

/** Share of the 28-day strength, with its work shown. */
export const workedStrengthShare = showing({
  id: 'strength-share',
  quantity: 'ratio',
  formula: String.raw`\frac{f(t)}{f_{28}} = \frac{t}{a + b\,t}`,
  terms: { days: ['t', 'ratio'], a: ['a', 'ratio'], b: ['b', 'ratio'] },
  sources: ['aci-209r-92'],
  of: strengthShare,
})

/** Age for a share of the 28-day strength, days, with its work shown. */
export const workedAgeForShare = showing({
  id: 'age-for-share',
  quantity: 'ratio',
  formula: String.raw`t = \frac{a\,s}{1 - b\,s}`,
  terms: { share: ['s', 'ratio'], a: ['a', 'ratio'], b: ['b', 'ratio'] },
  sources: ['aci-209r-92'],
  of: ageForShare,
})
