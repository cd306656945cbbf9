import { describe, expect, it } from 'vitest'
import {
  growingPresentValue,
  singlePresentValue,
  workedGrowingPresentValue,
  workedSinglePresentValue,
  workedYearlyPresentValue,
  yearlyPresentValue,
} from '../../../src/core/engineering/life/presentValue.ts'
import type { Seconds } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, digits, published, readCases } from '../cases.ts'

const years = (n: number) => at<Seconds>(n, 'yr')
const sum = (n: number, each: (year: number) => number) => Array.from({ length: n }, (_, i) => each(i + 1)).reduce((a, b) => a + b, 0)

describe('factors', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s at 3 %', (_, row) => {
    const inputs = { rate: 0.03, time: years(digits(row, 'years')) }
    published(singlePresentValue(inputs), row, '=SPV')
    published(yearlyPresentValue(inputs), row, '=UPV')
    expect(workedSinglePresentValue(inputs).value).toBe(singlePresentValue(inputs))
    expect(workedYearlyPresentValue(inputs).value).toBe(yearlyPresentValue(inputs))
  })
  it.each([
    [0.03, 0],
    [0.03, 0.01],
    [0.05, -0.02],
    [0.02, 0.02],
    [0, 0],
    [1e-12, 0],
  ])('rate %d, growth %d: the same as adding up year by year', (rate, growth) => {
    for (const n of [1, 7, 25, 60]) {
      close(
        yearlyPresentValue({ rate, time: years(n) }),
        sum(n, (year) => (1 + rate) ** -year),
        { abs: 0, rel: 1e-10 },
      )
      const grown = sum(n, (year) => ((1 + growth) / (1 + rate)) ** year)
      // With a rate and a growth a trillionth apart the closed form loses digits.
      close(growingPresentValue({ rate, growth, time: years(n) }), grown, {
        abs: 0,
        rel: Math.abs(rate - growth) > 1e-9 || rate === growth ? 1e-10 : 1e-3,
      })
    }
    expect(workedGrowingPresentValue({ rate, growth, time: years(20) }).quantity).toBe('ratio')
  })
})
