import { describe, expect, it } from 'vitest'
import { evidenceCurve } from '../../../src/core/engineering/life/evidenceCurves.ts'
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
    const found = evidenceCurve(treatedEvidence.find((one) => one.id === id) ?? (treatedEvidence[0] as never), 0.95)
    expect(found?.kind === 'curve' && found.weibull).toEqual(curve)
  })
  it('a row without failures gives a bound, a row without a sample nothing', () => {
    const row = (id: string) => treatedEvidence.find((one) => one.id === id) as (typeof treatedEvidence)[number]
    const bound = evidenceCurve(row('posts-cca-50'), 0.95)
    if (bound?.kind !== 'bound') throw new Error('no bound')
    close(bound.mostFailed, 0.02368, { abs: 5e-6, rel: 0 })
    close(bound.at, years(50), { abs: 0, rel: 0 })
    expect(evidenceCurve(row('posts-cca-35'), 0.95)).toBeNull()
  })
  it('has no curve where no rising one passes through both', () => {
    expect(weibullThrough({ time: years(50), failed: 0, median: years(96) })).toBeNull()
    expect(weibullThrough({ time: years(50), failed: 0.6, median: years(96) })).toBeNull()
    expect(weibullThrough({ time: years(50), failed: 0.1, median: years(50) })).toBeNull()
    close(shareSound({ time: years(60), shape: 2.5, scale: scaleOfMedian({ median: years(60), shape: 2.5 }) }), 0.5, { abs: 1e-12, rel: 0 })
  })
})
