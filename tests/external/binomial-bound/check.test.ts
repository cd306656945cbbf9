import { describe, expect, it } from 'vitest'
import { failedInterval } from '../../../src/core/engineering/life/failedInterval.ts'
import { workedZeroFailureBound, zeroFailureBound, zeroFailureCount } from '../../../src/core/engineering/life/zeroFailures.ts'
import { jStat } from '../../statistics.ts'
import { close } from '../../close.ts'
import { digits, published, readCases } from '../cases.ts'

const none = Number.NaN

describe('none failed', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const sample = digits(row, 'n')
    const bound = zeroFailureBound({ sample, confidence: 0.95 }) ?? none
    published(bound, row, '=percent', '%')
    published(bound, row, '=p')
    published(zeroFailureCount({ sample, confidence: 0.95 }) ?? none, row, '=count')
    expect(workedZeroFailureBound({ sample, confidence: 0.95 })?.value).toBe(bound)
  })
  it.each([1, 2, 10, 75, 125, 1000])('%d watched: the beta quantile and the binomial say the same', (sample) => {
    for (const confidence of [0.5, 0.9, 0.95, 0.99]) {
      const bound = zeroFailureBound({ sample, confidence }) ?? none
      // The upper Clopper-Pearson limit for 0 of n is a quantile of Beta(1, n); the library finds it by iteration.
      close(bound, jStat.beta.inv(confidence, 1, sample), { abs: 1e-7, rel: 1e-6 })
      close(jStat.binomial.pdf(0, sample, bound), 1 - confidence, { abs: 1e-12, rel: 0 })
    }
  })
  it.each([
    [3, 25],
    [5, 25],
    [9, 25],
    [1, 10],
    [10, 10],
    [40, 200],
  ])(
    '%d of %d failed: the interval has the tails of the binomial, and the library finds the same by the beta distribution',
    (failed, sample) => {
      const { low, high } = failedInterval({ failed, sample, confidence: 0.95 })
      close(low, jStat.beta.inv(0.025, failed, sample - failed + 1), { abs: 1e-6, rel: 0 })
      if (failed < sample) close(high, jStat.beta.inv(0.975, failed + 1, sample - failed), { abs: 1e-6, rel: 0 })
      else expect(high).toBe(1)
      const below = Array.from({ length: failed }, (_, k) => jStat.binomial.pdf(k, sample, low)).reduce((sum, one) => sum + one, 0)
      close(1 - below, 0.025, { abs: 1e-9, rel: 0 })
    },
  )
  it('where none failed the interval ends at the bound', () => {
    for (const sample of [1, 25, 75, 125]) {
      const { low, high } = failedInterval({ failed: 0, sample, confidence: 0.95 })
      expect(low).toBe(0)
      close(high, zeroFailureBound({ sample, confidence: 0.95 }) ?? none, { abs: 1e-12, rel: 0 })
    }
  })
  it('falls as more are watched, and has no value without a sample', () => {
    for (const sample of [1, 5, 50]) {
      expect(zeroFailureBound({ sample: sample + 1, confidence: 0.95 }) ?? none).toBeLessThan(
        zeroFailureBound({ sample, confidence: 0.95 }) ?? none,
      )
    }
    for (const bad of [0, -1, none]) expect(zeroFailureBound({ sample: bad, confidence: 0.95 })).toBeNull()
    for (const bad of [0, 1, none]) expect(zeroFailureBound({ sample: 10, confidence: bad })).toBeNull()
  })
})
