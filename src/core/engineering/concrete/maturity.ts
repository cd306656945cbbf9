import { showing } from '../showing.ts'
/** Reference and datum temperatures, Celsius: the working default and older practice. Source: memory. */
export const maturityDefaults = { reference: 20, datum: 0, olderDatum: -10, activationOverGas: 5000 } as const

type NurseSaulInputs = Readonly<{ days: number; temperature: number; datum: number; reference: number }>

/**
 * Age at the reference temperature that gives the same strength (Nurse-Saul).
 * @param days real age [d], non-negative
 * @param temperature mean concrete temperature [degC]
 * @param datum temperature below which nothing hardens [degC]
 * @param reference temperature [degC]
 * @returns equivalent age [d], zero below the datum
 * Formula: te = t (Ta - T0)/(Tr - T0)
 * Valid: above freezing. Outside: zero at and below the datum.
 * Source: memory
 * Checked by: tests/external/aci-209r-92/check.test.ts
 */
export function equivalentAgeNurseSaul({ days, temperature, datum, reference }: NurseSaulInputs): number {
  return (days * Math.max(0, temperature - datum)) / (reference - datum)
}

type ArrheniusInputs = Readonly<{ days: number; temperature: number; reference: number; activation: number }>

/**
 * Age at the reference temperature that gives the same strength (Arrhenius).
 * @param days real age [d], non-negative
 * @param temperature mean concrete temperature [degC]
 * @param reference temperature [degC]
 * @param activation activation energy over the gas constant Q [K], 5000
 * @returns equivalent age [d]
 * Formula: te = t exp[-Q (1/Ta - 1/Tr)], kelvin
 * Valid: above freezing. Outside: water that freezes hydrates nothing, which this form does not know.
 * Source: memory
 * Checked by: tests/external/aci-209r-92/check.test.ts
 */
export function equivalentAgeArrhenius({ days, temperature, reference, activation }: ArrheniusInputs): number {
  return days * Math.exp(-activation * (1 / (temperature + 273.15) - 1 / (reference + 273.15)))
}

/** Equivalent age by Nurse-Saul, days, with its work shown. */
export const workedEquivalentAgeNurseSaul = showing({
  id: 'equivalent-age-nurse-saul',
  quantity: 'ratio',
  formula: String.raw`t_e = t\,\frac{T_a - T_0}{T_r - T_0}`,
  terms: { days: ['t', 'ratio'], temperature: ['T_a', 'temperature'], datum: ['T_0', 'temperature'], reference: ['T_r', 'temperature'] },
  sources: ['memory'],
  of: equivalentAgeNurseSaul,
})

/** Equivalent age by Arrhenius, days, with its work shown. */
export const workedEquivalentAgeArrhenius = showing({
  id: 'equivalent-age-arrhenius',
  quantity: 'ratio',
  formula: String.raw`t_e = t\,e^{-Q(1/T_a - 1/T_r)}`,
  terms: { days: ['t', 'ratio'], temperature: ['T_a', 'temperature'], reference: ['T_r', 'temperature'], activation: ['Q', 'ratio'] },
  sources: ['memory'],
  of: equivalentAgeArrhenius,
})
