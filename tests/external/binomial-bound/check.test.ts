import { describe, expect, it } from 'vitest'
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
