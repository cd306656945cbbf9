import { describe, expect, it } from 'vitest'
import {
  scaleOfMedian,
  shareSound,
  weibullThrough,
  workedWeibullScale,
  workedWeibullShape,
} from '../../../src/core/engineering/life/weibull.ts'
import { treatedEvidence } from '../../../src/core/engineering/tables/lifeEvidence.ts'
import type { Seconds } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { jStat } from '../../statistics.ts'
import { at, digits, published, readCases, si } from '../cases.ts'

const years = (n: number) => at<Seconds>(n, 'yr')

describe('curves of two rows', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (id, row) => {
    const inputs = { time: years(50), failed: digits(row, 'failed'), median: si<Seconds>(row, 'median_yr', 'yr') }
    const curve = weibullThrough(inputs)
    if (!curve) throw new Error('no curve')
    published(curve.shape, row, '=k')
    published(curve.scale, row, '=eta_yr', 'yr')
    published(1 - shareSound({ time: years(30), ...curve }), row, '=P30_percent', '%')
    expect(workedWeibullShape(inputs)?.value).toBe(curve.shape)
    expect(workedWeibullScale(inputs)?.value).toBe(curve.scale)
    // Another library: the curve passes through both points, and its median and quantiles are ours.
    close(jStat.weibull.cdf(years(50), curve.scale, curve.shape), inputs.failed, { abs: 1e-12, rel: 0 })
    close(jStat.weibull.median(curve.scale, curve.shape), inputs.median, { abs: 0, rel: 1e-12 })
    for (const p of [0.01, 0.1, 0.5, 0.9]) {
      const time = jStat.weibull.inv(p, curve.scale, curve.shape) as Seconds
      close(shareSound({ time, ...curve }), 1 - p, { abs: 1e-12, rel: 0 })
    }
    const printed = treatedEvidence.find((one) => one.id === id)
    expect((printed?.sample?.failed ?? 0) / (printed?.sample?.count ?? 1)).toBeCloseTo(inputs.failed, 12)
    expect(printed?.median?.value).toBe(inputs.median)
  })
  it('has no curve where no rising one passes through both', () => {
    expect(weibullThrough({ time: years(50), failed: 0, median: years(96) })).toBeNull()
    expect(weibullThrough({ time: years(50), failed: 0.6, median: years(96) })).toBeNull()
    expect(weibullThrough({ time: years(50), failed: 0.1, median: years(50) })).toBeNull()
    close(shareSound({ time: years(60), shape: 2.5, scale: scaleOfMedian({ median: years(60), shape: 2.5 }) }), 0.5, { abs: 1e-12, rel: 0 })
  })
})
