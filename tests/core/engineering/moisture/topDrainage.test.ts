import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { runoff, workedRunoff } from '../../../../src/core/engineering/moisture/runoff.ts'
import { splashBand } from '../../../../src/core/engineering/moisture/splashBand.ts'
import { topSlope, workedTopSlope } from '../../../../src/core/engineering/moisture/topSlope.ts'
import { waterPath } from '../../../../src/core/engineering/moisture/waterPath.ts'
import { crownRise, splashHeight } from '../../../../src/core/engineering/tables/lotDrainage.ts'
import type { Metres, Slope } from '../../../../src/core/units/quantity.ts'
import { close } from '../../../close.ts'

const m = (value: number) => value as Metres
const shed = { slope: 0.16 as Slope, rimAboveUphill: m(0.05), rimAboveDownhill: m(0.1), heaped: m(0) }

describe('where rain goes at the top', () => {
  it('off a crown whose rim stands above the ground', () => {
    expect(waterPath(shed)).toEqual({ end: 'ground', reasons: [], fromUphill: false, overRim: 0 })
  })
  it('to the post once the rim is lowered below uphill grade', () => {
    expect(waterPath({ ...shed, rimAboveUphill: m(0) }).end).toBe('ground')
    expect(waterPath({ ...shed, rimAboveUphill: m(-0.001) })).toMatchObject({
      end: 'post',
      reasons: ['rim-below-uphill-grade'],
      fromUphill: true,
    })
  })
  it.each([
    [{ slope: -0.1 as Slope }, 'top-slopes-in'],
    [{ slope: 0 as Slope }, 'top-is-level'],
    [{ slope: null }, 'post-fills-hole'],
    [{ heaped: m(0.05) }, 'heaped-over'],
  ] as const)('%j: %s', (change, reason) => {
    expect(waterPath({ ...shed, ...change })).toMatchObject({ end: 'post', reasons: [reason] })
  })
  it('names every reason at once, and how deep water stands before it runs off downhill', () => {
    const all = waterPath({ slope: -0.1 as Slope, rimAboveUphill: m(-0.1), rimAboveDownhill: m(-0.03), heaped: m(0.1) })
    expect(all.reasons).toEqual(['top-slopes-in', 'rim-below-uphill-grade', 'heaped-over'])
    close(all.overRim, 0.03, { abs: 1e-15, rel: 0 })
  })
  it('ends on the ground only where the top sheds, the rim is not low and nothing is heaped', () => {
    const height = fc.double({ min: -0.2, max: 0.2, noNaN: true })
    fc.assert(
      fc.property(height, height, height, fc.double({ min: 0, max: 0.2, noNaN: true }), (slope, uphill, downhill, heaped) => {
        const { end, reasons } = waterPath({
          slope: slope as Slope,
          rimAboveUphill: m(uphill),
          rimAboveDownhill: m(downhill),
          heaped: m(heaped),
        })
        expect(end === 'ground').toBe(reasons.length === 0)
        if (end === 'ground') expect(slope > 0 && uphill > -1e-8 && heaped < 1e-8).toBe(true)
      }),
    )
  })
})

describe('slope, splash and runoff', () => {
  it('a dish slopes in by as much as a crown slopes out', () => {
    const given = { rimRadius: m(0.2), innerRadius: m(0.07) }
    close(topSlope({ ...given, rise: m(-0.02) }) ?? Number.NaN, -(topSlope({ ...given, rise: m(0.02) }) ?? Number.NaN), { abs: 0, rel: 0 })
    expect(topSlope({ rise: m(0.02), rimRadius: m(0.07), innerRadius: m(0.07) })).toBeNull()
    expect(workedTopSlope({ ...given, rise: m(0.02) })?.quantity).toBe('slope')
    expect([crownRise.least.printed, crownRise.usual.printed]).toEqual([0.5, 1])
  })
  it('splashes reach 300 mm over ground, 150 mm over gravel', () => {
    const over = (around: 'ground' | 'gravel') => splashBand({ around, groundAtPost: m(-0.1) })
    close(over('ground').to, 0.2, { abs: 1e-12, rel: 0 })
    close(over('gravel').to, 0.05, { abs: 1e-12, rel: 0 })
    close(over('gravel').inHeavyRain, 0.4, { abs: 1e-12, rel: 0 })
    expect(splashHeight.heavyRain.standing).toBe('common practice')
  })
  it('runoff grows with rain, area and share', () => {
    const flow = (share: number, rain: number, area: number) => runoff({ share, rain: rain as never, area: area as never })
    expect(flow(0.5, 1e-5, 10)).toBeLessThan(flow(0.9, 1e-5, 10))
    close(flow(0.5, 2e-5, 10), 2 * flow(0.5, 1e-5, 10), { abs: 0, rel: 1e-12 })
    expect(workedRunoff({ share: 0.95, rain: 1e-5 as never, area: 10 as never }).quantity).toBe('flow')
  })
})
