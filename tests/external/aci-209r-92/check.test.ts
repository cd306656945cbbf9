import { describe, expect, it } from 'vitest'
import { equivalentAgeArrhenius, equivalentAgeNurseSaul, maturityDefaults } from '../../../src/core/engineering/concrete/maturity.ts'
import {
  ageForShare,
  strengthGainConstants,
  strengthShare,
  workedStrengthShare,
} from '../../../src/core/engineering/concrete/strengthGain.ts'
import { close } from '../../close.ts'
import { digits, published, readCases } from '../cases.ts'

const { I, III } = strengthGainConstants.moist

describe('strength gain with age', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const days = digits(row, 'days')
    published(strengthShare({ days, ...I }), row, '=type-I')
    published(strengthShare({ days, ...III }), row, '=type-III')
    close(ageForShare({ share: strengthShare({ days, ...I }), ...I }) ?? Number.NaN, days, { abs: 0, rel: 1e-9 })
  })
  it.each(readCases(import.meta.url, 'percent.csv').map((row) => [row.id, row] as const))('%s in percent', (_, row) => {
    const share = workedStrengthShare({ days: digits(row, 'days'), ...I }).value
    published(100 * share, row, '=percent')
    published(share, row, '=share')
  })
  it('never reaches 1/b, and starts at nothing', () => {
    expect(strengthShare({ days: 0, ...I })).toBe(0)
    expect(ageForShare({ share: 1 / 0.85, ...I })).toBeNull()
  })
})

describe('age by temperature', () => {
  it.each(readCases(import.meta.url, 'maturity.csv').map((row) => [row.id, row] as const))('seven days at %s', (_, row) => {
    const temperature = ((digits(row, 'degF') - 32) * 5) / 9
    const given = { days: 7, temperature, reference: maturityDefaults.reference }
    const ages = [
      ['0', equivalentAgeNurseSaul({ ...given, datum: maturityDefaults.datum })],
      ['10', equivalentAgeNurseSaul({ ...given, datum: maturityDefaults.olderDatum })],
      ['Q', equivalentAgeArrhenius({ ...given, activation: maturityDefaults.activationOverGas })],
    ] as const
    for (const [name, age] of ages) {
      published(age, row, `=te${name}_d`)
      published(strengthShare({ days: age, ...I }), row, `=f${name}`)
    }
  })
  it('nothing ages below the datum', () => {
    expect(equivalentAgeNurseSaul({ days: 7, temperature: -3, datum: 0, reference: 20 })).toBe(0)
  })
})
