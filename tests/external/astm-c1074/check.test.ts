import { describe, expect, it } from 'vitest'
import { strengthGainConstants } from '../../../src/core/engineering/concrete/strengthGain.ts'
import { equivalentAge, workedEquivalentAge } from '../../../src/core/engineering/mix/equivalentAge.ts'
import { dayOfShare, strengthBand, workedDayOfShareLatest, workedShareLow } from '../../../src/core/engineering/mix/strengthBand.ts'
import { maturityVariants } from '../../../src/core/engineering/tables/maturity.ts'
import type { Celsius, Seconds } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, published, readCases, si } from '../cases.ts'

const { I } = strengthGainConstants.moist
const week = at<Seconds>(7, 'd')

describe('strength as a band', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('seven days at %s', (_, row) => {
    const temperature = si<Celsius>(row, 'degF', 'degF')
    const band = strengthBand({ age: week, temperature, ...I })
    if (!band) throw new Error('no band')
    for (const variant of maturityVariants) {
      published(band.by[variant.id], row, `=${variant.id}`)
      if (variant.id === 'activation-33500') published(variant.kelvin.value, row, '=kelvin')
    }
    expect(band.low).toBe(Math.min(...Object.values(band.by)))
    expect(band.high).toBe(Math.max(...Object.values(band.by)))
    // The day on which that share is reached is the seventh for the variant that gave it.
    for (const { id } of maturityVariants) {
      const days = dayOfShare({ share: band.by[id], temperature, ...I })
      close(days?.by[id] ?? Number.NaN, week, { abs: 0, rel: 1e-9 })
    }
  })
  it('closes up at 20 degC, where every variant counts a day as a day', () => {
    const band = strengthBand({ age: week, temperature: at(20, 'degC'), ...I })
    close(band?.low ?? Number.NaN, 7 / (4 + 0.85 * 7), { abs: 1e-12, rel: 0 })
    close(band?.high ?? Number.NaN, band?.low ?? Number.NaN, { abs: 1e-12, rel: 0 })
  })
  it('has no value at freezing and above 40 degC, nor for a share that the curve never reaches', () => {
    for (const degrees of [-5, 0, 40.1]) {
      expect(strengthBand({ age: week, temperature: at(degrees, 'degC'), ...I })).toBeNull()
      expect(dayOfShare({ share: 0.5, temperature: at(degrees, 'degC'), ...I })).toBeNull()
    }
    expect(dayOfShare({ share: 1.2, temperature: at(20, 'degC'), ...I })).toBeNull()
    expect(workedDayOfShareLatest({ share: 1.2, temperature: at(20, 'degC'), ...I })).toBeNull()
    expect(workedShareLow({ age: week, temperature: at(10, 'degC'), ...I })?.standing).toBe('from memory')
  })
  it('grows with time and with warmth, whatever the variant', () => {
    for (const variant of maturityVariants) {
      const age = (days: number, degrees: number) =>
        equivalentAge({ age: at(days, 'd'), temperature: at(degrees, 'degC'), variant }) ?? Number.NaN
      for (const days of [1, 3, 7, 28]) {
        expect(age(days, 15)).toBeGreaterThan(age(days, 5))
        expect(age(days + 1, 15)).toBeGreaterThan(age(days, 15))
      }
      expect(workedEquivalentAge({ age: week, temperature: at(10, 'degC'), variant })?.quantity).toBe('age')
    }
  })
})
