import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { methodCost, methodCostBand, replacementTimes, timesBefore } from '../../../../src/core/engineering/life/methodCost.ts'
import { equalYearlyCost, singlePresentValue } from '../../../../src/core/engineering/life/presentValue.ts'
import type { Seconds } from '../../../../src/core/units/quantity.ts'
import { close } from '../../../close.ts'

const year = 31_557_600
const yr = (n: number) => (n * year) as Seconds
const unit = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const plans = fc.record({
  first: unit(0, 1000),
  replacement: unit(0, 1000),
  inspection: unit(0, 100),
  every: unit(1, 30).map(yr),
  horizon: unit(1, 100).map(yr),
  rate: unit(0, 0.1),
  life: unit(1, 100).map(yr),
})

describe('cost of a method', () => {
  it('is what adding up every payment gives', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const { first, replacement, inspection, every, horizon, rate, life } = plan
        const later = (cost: number, period: Seconds) =>
          (replacementTimes({ period, horizon }) ?? []).reduce((sum, time) => sum + cost * singlePresentValue({ rate, time }), 0)
        close(methodCost(plan), first + later(replacement, life) + later(inspection, every), { abs: 1e-9, rel: 1e-9 })
      }),
    )
  })
  it('falls with longer life, with a higher rate and with fewer inspections', () => {
    fc.assert(
      fc.property(plans, unit(1.01, 3), (plan, times) => {
        const here = methodCost(plan) * (1 + 1e-12)
        expect(methodCost({ ...plan, life: (plan.life * times) as Seconds })).toBeLessThanOrEqual(here)
        expect(methodCost({ ...plan, rate: plan.rate + 0.01 })).toBeLessThanOrEqual(here)
        expect(methodCost({ ...plan, every: (plan.every * times) as Seconds })).toBeLessThanOrEqual(here)
        expect(methodCost({ ...plan, every: 0 as Seconds })).toBeLessThanOrEqual(here)
        const { low, high } = methodCostBand({ ...plan, life: { low: plan.life, high: (plan.life * times) as Seconds } })
        expect(low).toBeLessThanOrEqual(high)
      }),
    )
  })
  it.each([
    [15, 60, 3],
    [28.8, 60, 2],
    [60, 60, 0],
    [61, 60, 0],
    [59.999, 60, 1],
    [20, 60, 2],
    [0, 60, 0],
  ])('a life of %s years comes round before %s years %s times', (life, horizon, count) => {
    expect(timesBefore({ period: yr(life), horizon: yr(horizon) })).toBe(count)
    expect(replacementTimes({ period: yr(life), horizon: yr(horizon) })).toHaveLength(count)
  })
  it('a life of an hour has a cost but no list', () => {
    expect(replacementTimes({ period: 3600 as Seconds, horizon: yr(60) })).toBeNull()
    const cost = methodCost({
      first: 0,
      replacement: 1,
      inspection: 0,
      every: 0 as Seconds,
      horizon: yr(60),
      rate: 0.03,
      life: 3600 as Seconds,
    })
    expect(Number.isFinite(cost)).toBe(true)
  })
  it('spread evenly and added up again is itself, and over no time there is no yearly cost', () => {
    const yearly = equalYearlyCost({ presentValue: 1000, rate: 0.03, time: yr(20) }) ?? Number.NaN
    const sum = Array.from({ length: 20 }, (_, i) => yearly * singlePresentValue({ rate: 0.03, time: yr(i + 1) })).reduce(
      (a, b) => a + b,
      0,
    )
    close(sum, 1000, { abs: 1e-9, rel: 0 })
    expect(equalYearlyCost({ presentValue: 1000, rate: 0.03, time: 0 as Seconds })).toBeNull()
  })
  it('which of two methods costs less turns with the rate', () => {
    const often = (rate: number) =>
      methodCost({ first: 100, replacement: 600, inspection: 0, every: 0 as Seconds, horizon: yr(60), rate, life: yr(40) })
    const once = 250
    expect(often(0.02)).toBeGreaterThan(once)
    expect(often(0.07)).toBeLessThan(once)
  })
})
