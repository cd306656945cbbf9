import { type Celsius, celsius, type Metres } from '../../../src/core/units/quantity.ts'
import { cited } from '../../../src/core/engineering/cited.ts'
import type { ClimateMonth } from '../../../src/core/engineering/life/climateIndex.ts'

/** Rain from which a day counts, 0.25 mm (0.01 in). Services that count from 1 mm give a far lower index. Source: scheffer-1971. */
export const wetDayThreshold = cited<Metres>(0.25, 'mm', 'scheffer-1971', 'from memory')

/** One day of record. `month` 1 to 12. */
export type DayOfRecord = Readonly<{ year: number; month: number; rain: Metres; warmest: Celsius; coldest: Celsius }>

/**
 * Months of a mean year from a daily record.
 * @param days record [m, degC]; whole years; shape [n]
 * @param threshold rain from which a day counts [m]
 * @returns twelve months [degC, days]; null when a month has no day
 * Formula: T = mean of (max + min)/2 over all days of the month; D = days counted over the number of years
 * Valid: whole years. Outside: a few years are no climate normal.
 * Source: scheffer-1971
 * Checked by: tests/external/noaa-seattle-2012/check.test.ts
 */
export function climateMonths(days: readonly DayOfRecord[], threshold: Metres): readonly ClimateMonth[] | null {
  const years = new Set(days.map(({ year }) => year)).size
  const months: ClimateMonth[] = []
  for (let month = 1; month <= 12; month++) {
    const mine = days.filter((day) => day.month === month)
    if (mine.length === 0) return null
    const warmth = mine.reduce((sum, { warmest, coldest }) => sum + (warmest + coldest) / 2, 0)
    // A record in tenths of a millimetre says 0.3 for a quarter: the threshold is met to the last bit of its own unit.
    const wet = mine.filter(({ rain }) => rain >= threshold * (1 - 1e-12)).length
    months.push({ temperature: celsius(warmth / mine.length), wetDays: wet / years })
  }
  return months
}
