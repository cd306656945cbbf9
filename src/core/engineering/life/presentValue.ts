import type { Seconds } from '../../units/quantity.ts'
import { toPrinted } from '../cited.ts'
import { showing } from '../showing.ts'

/** Whole and part years of a time: rates are per year. */
export const inYears = (time: Seconds): number => toPrinted(time, 'yr')

type SingleInputs = Readonly<{ rate: number; time: Seconds }>

/**
 * Present value of one sum of money paid at a later time.
 * @param rate real rate a year [1], above -1
 * @param time until it is paid [s], non-negative
 * @returns present value of 1 [1]
 * Formula: SPV = (1 + d)^-n
 * Valid: constant money and a real rate. Outside: with a nominal rate the sums must grow with prices.
 * Source: discount-factors
 * Checked by: tests/external/discount-factors/check.test.ts
 */
export function singlePresentValue({ rate, time }: SingleInputs): number {
  return (1 + rate) ** -inYears(time)
}

/**
 * Present value of one sum paid at the end of every year.
 * @param rate real rate a year [1], above -1
 * @param time over which it is paid [s], non-negative
 * @returns present value of 1 a year [1]; the number of years at a rate of nought
 * Formula: UPV = [1 - (1 + d)^-n]/d
 * Valid: constant money and a real rate. Outside: as above.
 * Source: discount-factors
 * Checked by: tests/external/discount-factors/check.test.ts
 */
export function yearlyPresentValue({ rate, time }: SingleInputs): number {
  const years = inYears(time)
  return rate === 0 ? years : -Math.expm1(-years * Math.log1p(rate)) / rate
}

type GrowingInputs = Readonly<{ rate: number; growth: number; time: Seconds }>

/**
 * Present value of a sum paid every year that grows at a steady real rate.
 * @param rate real rate a year [1], above -1
 * @param growth real growth of the sum a year [1], above -1
 * @param time over which it is paid [s], non-negative
 * @returns present value, for a sum of 1 before the first growth [1]
 * Formula: UPV* = (1 + e)/(d - e) {1 - [(1 + e)/(1 + d)]^n}; n where e = d
 * Valid: steady growth. Outside: none.
 * Source: discount-factors
 * Checked by: tests/external/discount-factors/check.test.ts
 */
export function growingPresentValue({ rate, growth, time }: GrowingInputs): number {
  const years = inYears(time)
  if (rate === growth) return years
  return ((1 + growth) / (rate - growth)) * (1 - ((1 + growth) / (1 + rate)) ** years)
}

type RealInputs = Readonly<{ nominal: number; inflation: number }>

/**
 * Real rate from a nominal one.
 * @param nominal rate a year [1]
 * @param inflation of prices a year [1], above -1
 * @returns real rate a year [1]
 * Formula: d = (1 + D)/(1 + I) - 1
 * Valid: steady inflation. Outside: none.
 * Source: discount-factors
 * Checked by: tests/external/femp-rate-2010/check.test.ts
 */
export function realRate({ nominal, inflation }: RealInputs): number {
  return (1 + nominal) / (1 + inflation) - 1
}

type EqualInputs = Readonly<{ presentValue: number; rate: number; time: Seconds }>

/**
 * Equal yearly cost that has a given present value.
 * @param presentValue of all costs, in the user's money [1]
 * @param rate real rate a year [1]
 * @param time over which it is spread [s], positive
 * @returns cost a year, in the user's money [1]; null over no time
 * Formula: EUAC = PV/UPV
 * Valid: methods compared over one horizon. Outside: none.
 * Source: discount-factors
 * Checked by: tests/external/water-and-time-examples/check.test.ts
 */
export function equalYearlyCost({ presentValue, rate, time }: EqualInputs): number | null {
  const factor = yearlyPresentValue({ rate, time })
  return factor > 0 ? presentValue / factor : null
}

const rate = ['d', 'ratio'] as const
const time = ['n', 'life'] as const

/** Present value of one sum, with its work shown. */
export const workedSinglePresentValue = showing({
  id: 'single-present-value',
  quantity: 'ratio',
  formula: String.raw`\mathrm{SPV} = (1 + d)^{-n}`,
  terms: { rate, time },
  sources: ['discount-factors'],
  of: singlePresentValue,
})

/** Present value of a yearly sum, with its work shown. */
export const workedYearlyPresentValue = showing({
  id: 'yearly-present-value',
  quantity: 'ratio',
  formula: String.raw`\mathrm{UPV} = \frac{1 - (1 + d)^{-n}}{d}`,
  terms: { rate, time },
  sources: ['discount-factors'],
  of: yearlyPresentValue,
})

/** Present value of a growing yearly sum, with its work shown. */
export const workedGrowingPresentValue = showing({
  id: 'growing-present-value',
  quantity: 'ratio',
  formula: String.raw`\mathrm{UPV}^* = \frac{1 + e}{d - e}\left[1 - \left(\frac{1 + e}{1 + d}\right)^{n}\right]`,
  terms: { rate, growth: ['e', 'ratio'], time },
  sources: ['discount-factors'],
  of: growingPresentValue,
})

/** Real rate, with its work shown. */
export const workedRealRate = showing({
  id: 'real-rate',
  quantity: 'ratio',
  formula: String.raw`d = \frac{1 + D}{1 + I} - 1`,
  terms: { nominal: ['D', 'ratio'], inflation: ['I', 'ratio'] },
  sources: ['discount-factors'],
  of: realRate,
})

/** Equal yearly cost, with its work shown. */
export const workedEqualYearlyCost = showing({
  id: 'equal-yearly-cost',
  quantity: 'money',
  formula: String.raw`\mathrm{EUAC} = \frac{\mathrm{PV}}{\mathrm{UPV}}`,
  terms: { presentValue: [String.raw`\mathrm{PV}`, 'money'], rate, time },
  sources: ['discount-factors'],
  of: equalYearlyCost,
})
