import { type Celsius, type Seconds, seconds } from '../../units/quantity.ts'
import { fromPrinted, toPrinted } from '../cited.ts'
import { ageForShare, strengthShare } from '../concrete/strengthGain.ts'
import { showing } from '../showing.ts'
import { type MaturityVariant, maturityVariants } from '../tables/maturity.ts'
import { equivalentAge } from './equivalentAge.ts'

type ShareInputs = Readonly<{ age: Seconds; temperature: Celsius; a: number; b: number }>
/** What each variant gives, and the least and greatest of them. */
export type ShareBand = Readonly<{ low: number; high: number; by: Readonly<Record<MaturityVariant['id'], number>> }>

/**
 * Share of the 28-day strength after a time at a temperature, as a band over the ways to count maturity.
 * @param age real time since placing [s], non-negative
 * @param temperature mean of the concrete [degC]
 * @param a constant of strength gain [d]: 4 for moist-cured Type I
 * @param b constant of strength gain [1]: 0.85 for moist-cured Type I
 * @returns least, greatest and each [1]; null outside the temperatures that the variants hold for
 * Formula: t_e/(a + b t_e) for each variant's t_e, days
 * Valid: mixed concrete kept moist, above 0 to 40 degC. Outside: no value; dry-placed mix has no such curve.
 * Source: aci-209r-92, astm-c1074, memory
 * Checked by: tests/external/astm-c1074/check.test.ts
 */
export function strengthBand({ age, temperature, a, b }: ShareInputs): ShareBand | null {
  const by = {} as Record<MaturityVariant['id'], number>
  for (const variant of maturityVariants) {
    const equivalent = equivalentAge({ age, temperature, variant })
    if (equivalent === null) return null
    by[variant.id] = strengthShare({ days: toPrinted(equivalent, 'd'), a, b })
  }
  return { low: Math.min(...Object.values(by)), high: Math.max(...Object.values(by)), by }
}

type DayInputs = Readonly<{ share: number; temperature: Celsius; a: number; b: number }>
export type DayBand = Readonly<{ soonest: Seconds; latest: Seconds; by: Readonly<Record<MaturityVariant['id'], Seconds>> }>

/**
 * Time after which a typed share of the 28-day strength is reached, as a band. When to load is for the engineer and the inspector.
 * @param share of the 28-day strength that the user typed [1], non-negative
 * @param temperature mean of the concrete [degC]
 * @param a constant of strength gain [d]
 * @param b constant of strength gain [1]
 * @returns soonest, latest and each [s]; null where the curve never gets there or the temperature is outside the variants' limits
 * Formula: t_e = a s/(1 - b s); t = t_e over what one day at T counts for
 * Valid: mixed concrete kept moist, above 0 to 40 degC. Outside: no value.
 * Source: aci-209r-92, astm-c1074, memory
 * Checked by: tests/external/astm-c1074/check.test.ts
 */
export function dayOfShare({ share, temperature, a, b }: DayInputs): DayBand | null {
  const atReference = ageForShare({ share, a, b })
  if (atReference === null) return null
  const by = {} as Record<MaturityVariant['id'], Seconds>
  for (const variant of maturityVariants) {
    const perDay = equivalentAge({ age: seconds(fromPrinted(1, 'd')), temperature, variant })
    if (perDay === null) return null
    by[variant.id] = seconds(fromPrinted(atReference, 'd') / toPrinted(perDay, 'd'))
  }
  const all = Object.values(by)
  return { soonest: seconds(Math.min(...all)), latest: seconds(Math.max(...all)), by }
}

const shareFormula = String.raw`\frac{f}{f_{28}} = \frac{t_e}{a + b\,t_e}`
const dayFormula = String.raw`t = \frac{a\,s}{1 - b\,s}\cdot\frac{t}{t_e(T)}`
const curve = { a: ['a', 'ratio'], b: ['b', 'ratio'] } as const

/** Least share by any variant, with its work shown. */
export const workedShareLow = showing({
  id: 'strength-share-low',
  quantity: 'ratio',
  formula: shareFormula,
  terms: { age: ['t', 'age'], temperature: ['T', 'temperature'], ...curve },
  sources: ['aci-209r-92', 'astm-c1074', 'memory', 'maturity-activation'],
  of: (inputs: ShareInputs) => strengthBand(inputs)?.low ?? null,
})

/** Greatest share by any variant, with its work shown. */
export const workedShareHigh = showing({
  id: 'strength-share-high',
  quantity: 'ratio',
  formula: shareFormula,
  terms: { age: ['t', 'age'], temperature: ['T', 'temperature'], ...curve },
  sources: ['aci-209r-92', 'astm-c1074', 'memory', 'maturity-activation'],
  of: (inputs: ShareInputs) => strengthBand(inputs)?.high ?? null,
})

/** Soonest day of the typed share, with its work shown. */
export const workedDayOfShareSoonest = showing({
  id: 'day-of-share-soonest',
  quantity: 'age',
  formula: dayFormula,
  terms: { share: ['s', 'ratio'], temperature: ['T', 'temperature'], ...curve },
  sources: ['aci-209r-92', 'astm-c1074', 'memory', 'maturity-activation'],
  of: (inputs: DayInputs) => dayOfShare(inputs)?.soonest ?? null,
})

/** Latest day of the typed share, with its work shown. */
export const workedDayOfShareLatest = showing({
  id: 'day-of-share-latest',
  quantity: 'age',
  formula: dayFormula,
  terms: { share: ['s', 'ratio'], temperature: ['T', 'temperature'], ...curve },
  sources: ['aci-209r-92', 'astm-c1074', 'memory', 'maturity-activation'],
  of: (inputs: DayInputs) => dayOfShare(inputs)?.latest ?? null,
})
