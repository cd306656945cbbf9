import type { Celsius } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

/** One month of a normal year: mean air temperature, and mean number of days with rain at or over the index's own threshold. */
export type ClimateMonth = Readonly<{ temperature: Celsius; wetDays: number }>

/** Temperature and days taken off, and the divisor. Source: scheffer-1971. */
export const climateIndexConstants = {
  temperature: cited<Celsius>(2, 'degC', 'scheffer-1971', 'from memory'),
  days: cited(3, '1', 'scheffer-1971', 'from memory'),
  divisor: cited(16.7, '1', 'scheffer-1971', 'from memory'),
} as const

/**
 * Climate index of decay for wood above ground.
 * @param months twelve months [degC, days]; shape [12]
 * @returns index [1]; null unless there are twelve months
 * Formula: sum over the months of max(T - 2, 0) max(D - 3, 0)/16.7; each bracket on its own is not below zero
 * Valid: wood above ground, days counted from 0.25 mm. Outside: never for wood in the ground, where the hazard is high whatever the index.
 * Source: scheffer-1971
 * Checked by: tests/external/noaa-seattle-2012/check.test.ts
 */
export function climateIndex(months: readonly ClimateMonth[]): number | null {
  if (months.length !== 12) return null
  return months.reduce((sum, month) => sum + monthShare(month), 0)
}

/**
 * What one month adds to the index.
 * @param temperature mean of the month [degC]
 * @param wetDays days with 0.25 mm or more [1]
 * @returns share of the index [1], never below zero
 * Formula: max(T - 2, 0) max(D - 3, 0)/16.7
 * Valid: as for the index. Outside: without the two limits a cold, dry month would add, since two negatives multiply.
 * Source: scheffer-1971
 * Checked by: tests/external/water-and-time-examples/check.test.ts
 */
export function monthShare({ temperature, wetDays }: ClimateMonth): number {
  const { temperature: cool, days, divisor } = climateIndexConstants
  return (Math.max(temperature - cool.value, 0) * Math.max(wetDays - days.value, 0)) / divisor.value
}

export type DecayHazard = 'low' | 'moderate' | 'high'
/** Indices at which the class changes. Source: wbdg-decay. */
export const hazardBreaks = { moderate: cited(35, '1', 'wbdg-decay', 'read'), high: cited(65, '1', 'wbdg-decay', 'read') } as const

/**
 * Class of decay hazard.
 * @param place 'above-ground', or 'in-ground', which is always high [1]
 * @param index climate index [1]; not looked at in the ground
 * @returns class [1]
 * Formula: low below 35, moderate to 65, high above; in the ground, high
 * Valid: United States. Outside: older maps break at 70.
 * Source: wbdg-decay
 * Checked by: tests/external/wbdg-decay/check.test.ts
 */
export function decayHazard({ place, index }: Readonly<{ place: 'above-ground' | 'in-ground'; index: number }>): DecayHazard {
  if (place === 'in-ground' || index > hazardBreaks.high.value) return 'high'
  return index >= hazardBreaks.moderate.value ? 'moderate' : 'low'
}

/** Climate index, with its work shown. */
export const workedClimateIndex = showing({
  id: 'climate-index',
  quantity: 'ratio',
  formula: String.raw`\sum_{12}\frac{\max(T - 2,\ 0)\,\max(D - 3,\ 0)}{16.7}`,
  terms: {},
  sources: ['scheffer-1971'],
  of: ({ months }: Readonly<{ months: readonly ClimateMonth[] }>) => climateIndex(months),
})
