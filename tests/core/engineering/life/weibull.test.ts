import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  scaleOfMedian,
  shareSound,
  shareSoundBand,
  weibullThrough,
  workedShareSound,
} from '../../../../src/core/engineering/life/weibull.ts'
import type { Seconds } from '../../../../src/core/units/quantity.ts'
import { close } from '../../../close.ts'

const s = (value: number) => value as Seconds
const unit = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('share still sound', () => {
  it('starts at all, falls with time, is half at the median', () => {
    fc.assert(
      fc.property(unit(1, 100), unit(0.5, 6), unit(0, 200), unit(0.1, 50), (median, shape, time, more) => {
        const scale = scaleOfMedian({ median: s(median), shape })
        expect(shareSound({ time: s(0), shape, scale })).toBe(1)
        expect(shareSound({ time: s(time + more), shape, scale })).toBeLessThanOrEqual(shareSound({ time: s(time), shape, scale }))
        close(shareSound({ time: s(median), shape, scale }), 0.5, { abs: 1e-12, rel: 0 })
        expect(workedShareSound({ time: s(time), shape, scale }).value).toBe(shareSound({ time: s(time), shape, scale }))
      }),
    )
  })
  it('a range holds every curve between its ends', () => {
    fc.assert(
      fc.property(unit(1, 50), unit(1, 50), unit(1, 4), unit(1, 4), unit(0, 100), unit(0, 1), unit(0, 1), (a, b, k, l, time, u, v) => {
        const median = { low: s(Math.min(a, b)), high: s(Math.max(a, b)) }
        const shape = { low: Math.min(k, l), high: Math.max(k, l) }
        const band = shareSoundBand({ time: s(time), median, shape })
        const half = s(median.low + u * (median.high - median.low))
        const bend = shape.low + v * (shape.high - shape.low)
        const inside = shareSound({ time: s(time), shape: bend, scale: scaleOfMedian({ median: half, shape: bend }) })
        expect(inside).toBeGreaterThanOrEqual(band.low - 1e-12)
        expect(inside).toBeLessThanOrEqual(band.high + 1e-12)
      }),
    )
  })
  it('the curve passes through its two points', () => {
    fc.assert(
      fc.property(unit(1, 50), unit(0.01, 0.49), unit(1.01, 5), (time, failed, times) => {
        const curve = weibullThrough({ time: s(time), failed, median: s(time * times) })
        if (!curve) throw new Error('no curve')
        close(1 - shareSound({ time: s(time), ...curve }), failed, { abs: 1e-9, rel: 0 })
        close(shareSound({ time: s(time * times), ...curve }), 0.5, { abs: 1e-9, rel: 0 })
      }),
    )
  })
})
