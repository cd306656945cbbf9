import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import {
  climateIndex,
  climateIndexConstants,
  type ClimateMonth,
  workedClimateIndex,
} from '../../../src/core/engineering/life/climateIndex.ts'
import { climateMonths, type DayOfRecord, wetDayThreshold } from './climateMonths.ts'
import { seattle } from '../../../src/core/engineering/tables/climateRecords.ts'
import type { Metres } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, parse, published, readCases, si } from '../cases.ts'

const file = fileURLToPath(new URL('../../../node_modules/vega-datasets/data/seattle-weather.csv', import.meta.url))
const days: readonly DayOfRecord[] = parse(readFileSync(file, 'utf8')).map((row) => {
  const [year = '', month = ''] = (row.date ?? '').split('-')
  return {
    year: Number(year),
    month: Number(month),
    rain: si(row, 'precipitation', 'mm'),
    warmest: si(row, 'temp_max', 'degC'),
    coldest: si(row, 'temp_min', 'degC'),
  }
})
const monthsFrom = (threshold: Metres) => climateMonths(days, threshold) ?? []
const wrong = at<Metres>(1, 'mm')
/** The index as it would be if two negatives were let multiply. */
const withoutLimits = (months: readonly ClimateMonth[]) => {
  const { temperature: cool, days: few, divisor } = climateIndexConstants
  return months.reduce((sum, { temperature, wetDays }) => sum + ((temperature - cool.value) * (wetDays - few.value)) / divisor.value, 0)
}

describe('four years of days', () => {
  it('are all there', () => expect(days).toHaveLength(1461))
  it.each(readCases(import.meta.url).map((row, i) => [Number(row.id), i, row] as const))('month %d', (_, i, row) => {
    const month = monthsFrom(wetDayThreshold.value)[i]
    published(month?.temperature ?? Number.NaN, row, '=T_degC', 'degC')
    published(month?.wetDays ?? Number.NaN, row, '=D025')
    published(monthsFrom(wrong)[i]?.wetDays ?? Number.NaN, row, '=D100')
    close(seattle.months[i]?.wetDays ?? Number.NaN, month?.wetDays ?? 0, { abs: 1e-12, rel: 0 })
    published(seattle.months[i]?.temperature ?? Number.NaN, row, '=T_degC', 'degC')
  })
  it.each(readCases(import.meta.url, 'index.csv').map((row) => [row.id, row] as const))('[trap 7] %s', (_, row) => {
    const threshold = si<Metres>(row, 'threshold_mm', 'mm')
    const exact = monthsFrom(threshold)
    const rounded = seattle.months.map(({ temperature }, i) => ({ temperature, wetDays: exact[i]?.wetDays ?? Number.NaN }))
    const months = row.from === 'days' ? exact : rounded
    published(row.clamped === 'yes' ? (climateIndex(months) ?? Number.NaN) : withoutLimits(months), row, '=index')
  })
  it('the wrong rain day loses 29 percent', () => {
    const right = climateIndex(monthsFrom(wetDayThreshold.value)) ?? Number.NaN
    close(1 - (climateIndex(monthsFrom(wrong)) ?? Number.NaN) / right, 0.29, { abs: 0.005, rel: 0 })
  })
  it('has no index without twelve months', () => {
    expect(climateIndex(seattle.months.slice(1))).toBeNull()
    expect(workedClimateIndex({ months: seattle.months })?.standing).toBe('from memory')
    expect(
      climateMonths(
        days.filter(({ month }) => month !== 7),
        wrong,
      ),
    ).toBeNull()
  })
})
