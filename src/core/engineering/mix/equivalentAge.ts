import { type Celsius, type Seconds, seconds } from '../../units/quantity.ts'
import { fromPrinted, toPrinted } from '../cited.ts'
import { equivalentAgeArrhenius, equivalentAgeNurseSaul } from '../concrete/maturity.ts'
import { showing } from '../showing.ts'
import { type MaturityVariant, maturityLimits, maturityReference } from '../tables/maturity.ts'

type Inputs = Readonly<{ age: Seconds; temperature: Celsius; variant: MaturityVariant }>

/**
 * Age at 20 degC that gives the strength concrete has after a time at its own temperature.
 * @param age real time [s], non-negative
 * @param temperature mean of the concrete over that time [degC]
 * @param variant straight line from a datum, or exponential [1]
 * @returns equivalent age [s]; null at 0 degC and below and above 40 degC
 * Formula: te = t (T - T0)/(Tr - T0), or te = t exp[-Q (1/T - 1/Tr)], kelvin
 * Valid: above 0 to 40 degC. Outside: no value; water that freezes hydrates nothing.
 * Source: astm-c1074, memory
 * Checked by: tests/external/astm-c1074/check.test.ts
 */
export function equivalentAge({ age, temperature, variant }: Inputs): Seconds | null {
  if (temperature <= maturityLimits.low.value || temperature > maturityLimits.high.value) return null
  const days = toPrinted(age, 'd')
  const reference = maturityReference.value
  const found =
    'datum' in variant
      ? equivalentAgeNurseSaul({ days, temperature, datum: variant.datum.value, reference })
      : equivalentAgeArrhenius({ days, temperature, reference, activation: variant.kelvin.value })
  return seconds(fromPrinted(found, 'd'))
}

/** Equivalent age, with its work shown. */
export const workedEquivalentAge = showing({
  id: 'equivalent-age',
  quantity: 'age',
  formula: ({ variant }: Inputs) =>
    'datum' in variant
      ? String.raw`t_e = t\,\frac{T - (${variant.datum.printed})}{20 - (${variant.datum.printed})}`
      : String.raw`t_e = t\,\exp\!\left[-${Math.round(variant.kelvin.value)}\left(\frac{1}{T} - \frac{1}{293.15}\right)\right]`,
  terms: { age: ['t', 'age'], temperature: ['T', 'temperature'] },
  sources: ['astm-c1074', 'memory'],
  of: equivalentAge,
})
