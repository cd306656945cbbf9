import { type Seconds, seconds } from '../../units/quantity.ts'
import { showing } from '../showing.ts'
import { singlePresentValue } from './presentValue.ts'

type PeriodInputs = Readonly<{ period: Seconds; horizon: Seconds }>

/**
 * How often something comes round before a horizon.
 * @param period between two times [s]; zero for never
 * @param horizon up to which times are counted [s], non-negative
 * @returns number of times after the start and before the horizon [1]; none at the horizon itself
 * Formula: greatest m with m P < H
 * Valid: steady periods. Outside: none.
 * Source: definition
 * Checked by: tests/core/engineering/life/methodCost.test.ts
 */
export function timesBefore({ period, horizon }: PeriodInputs): number {
  return period > 0 ? Math.max(0, Math.ceil((horizon / period) * (1 - 1e-12)) - 1) : 0
}

/** More replacements than this are not listed one by one. */
const mostListed = 1000

/**
 * Times at which a part that lasts a given life is replaced.
 * @param period life of the part [s], positive
 * @param horizon up to which times are counted [s], non-negative
 * @returns times from the start [s]; shape [n], ascending; null for more than a thousand
 * Formula: m L < H, m = 1, 2, ...
 * Valid: each replacement lasts as long as the first. Outside: no list.
 * Source: definition
 * Checked by: tests/external/water-and-time-examples/check.test.ts
 */
export function replacementTimes({ period, horizon }: PeriodInputs): readonly Seconds[] | null {
  const count = timesBefore({ period, horizon })
  return count > mostListed ? null : Array.from({ length: count }, (_, i) => seconds((i + 1) * period))
}

/** Prices in the user's money; `every` is the time between inspections, zero for none. */
type Prices = Readonly<{ first: number; replacement: number; inspection: number; every: Seconds; horizon: Seconds; rate: number }>
type CostInputs = Prices & Readonly<{ life: Seconds }>

/**
 * Present value of all that one method costs over a horizon. Every price is the user's.
 * @param first cost, in the user's money [1], non-negative
 * @param replacement cost of one replacement in the standing building, in the user's money [1], non-negative
 * @param inspection cost of one inspection, in the user's money [1], non-negative
 * @param every time between inspections [s]; zero for none
 * @param horizon up to which costs are counted [s]
 * @param rate real rate a year [1], above -1
 * @param life until a replacement [s], positive
 * @returns present value, in the user's money [1]
 * Formula: PV = first + sum of replacements SPV + sum of inspections SPV
 * Valid: constant money, real rate. Outside: what is left at the horizon is worth nothing here.
 * Source: discount-factors
 * Checked by: tests/external/water-and-time-examples/check.test.ts
 */
export function methodCost({ first, replacement, inspection, every, horizon, rate, life }: CostInputs): number {
  const later = (cost: number, period: Seconds) => cost * repeated(rate, period, timesBefore({ period, horizon }))
  return first + later(replacement, life) + later(inspection, every)
}

/** Present value of 1 paid `count` times, `period` [s] apart, the first after one period: a geometric sum. */
function repeated(rate: number, period: Seconds, count: number): number {
  if (count === 0) return 0
  const each = singlePresentValue({ rate, time: period })
  return each === 1 ? count : (each * (1 - each ** count)) / (1 - each)
}

type BandInputs = Prices & Readonly<{ life: Readonly<{ low: Seconds; high: Seconds }> }>

/**
 * Present value of one method over a range of life.
 * @param first cost, in the user's money [1], non-negative
 * @param replacement cost of one replacement in the standing building, in the user's money [1], non-negative
 * @param inspection cost of one inspection, in the user's money [1], non-negative
 * @param every time between inspections [s]; zero for none
 * @param horizon up to which costs are counted [s]
 * @param rate real rate a year [1], above -1
 * @param life least and greatest time until a replacement [s], positive
 * @returns cost at the greatest life and at the least, in the user's money [1]
 * Formula: PV at the greatest life, PV at the least
 * Valid: as for one cost. Outside: the order of two methods may turn with life and rate: show both.
 * Source: discount-factors
 * Checked by: tests/core/engineering/life/methodCost.test.ts
 */
export function methodCostBand({ life, ...prices }: BandInputs): Readonly<{ low: number; high: number }> {
  return { low: methodCost({ ...prices, life: life.high }), high: methodCost({ ...prices, life: life.low }) }
}

/** Present value of a method, with its work shown. */
export const workedMethodCost = showing({
  id: 'method-cost',
  quantity: 'money',
  formula: String.raw`\mathrm{PV} = C_0 + \sum_{mL < H} C_r (1 + d)^{-mL} + \sum_{mI < H} C_i (1 + d)^{-mI}`,
  terms: {
    first: ['C_0', 'money'],
    replacement: ['C_r', 'money'],
    inspection: ['C_i', 'money'],
    life: ['L', 'life'],
    every: ['I', 'life'],
    horizon: ['H', 'life'],
    rate: ['d', 'ratio'],
  },
  sources: ['discount-factors', 'user'],
  of: methodCost,
})
