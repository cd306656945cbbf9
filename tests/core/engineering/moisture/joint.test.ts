import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  capillaryHold,
  conductivityRatio,
  jointConductivity,
  workedConductivityRatio,
} from '../../../../src/core/engineering/moisture/jointConductivity.ts'
import { jointGap, jointGapAt, wedgeReach } from '../../../../src/core/engineering/moisture/jointGap.ts'
import { roundJointVolume, workedJointVolume, workedRoundJointVolume } from '../../../../src/core/engineering/moisture/jointVolume.ts'
import { woodShrinkage, workedWoodShrinkage } from '../../../../src/core/engineering/moisture/woodShrinkage.ts'
import { textures } from '../../../../src/core/engineering/tables/infiltration.ts'
import { waterUnitWeight } from '../../../../src/core/engineering/tables/materials.ts'
import { groupShrinkage } from '../../../../src/core/engineering/tables/shrinkage.ts'
import type { Metres } from '../../../../src/core/units/quantity.ts'
import { close } from '../../../close.ts'

const m = (value: number) => value as Metres
const unit = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const gap = (size: number, whole: number, before: number, now: number) =>
  jointGap({ size: m(size), before: woodShrinkage({ whole, moisture: before }), now: woodShrinkage({ whole, moisture: now }) })

describe('the joint that drying opens', () => {
  it('grows with size, with shrinkage, with wetter setting and with drier service', () => {
    fc.assert(
      fc.property(unit(0.05, 0.4), unit(0.01, 0.1), unit(0, 0.5), unit(0, 0.5), unit(0.001, 0.1), (size, whole, before, now, more) => {
        const here = gap(size, whole, before, now)
        expect(here).toBeGreaterThanOrEqual(0)
        expect(gap(size + more, whole, before, now)).toBeGreaterThanOrEqual(here)
        expect(gap(size, whole, before + more, now)).toBeGreaterThanOrEqual(here)
        expect(gap(size, whole, before, now + more)).toBeLessThanOrEqual(here)
        if (now >= before) expect(here).toBe(0)
      }),
    )
  })
  it('nothing moves above fibre saturation', () => {
    expect(woodShrinkage({ whole: 0.074, moisture: 0.3 })).toBe(0)
    close(woodShrinkage({ whole: 0.074, moisture: 0.29 }), 0.074 / 30, { abs: 1e-12, rel: 0 })
    expect(gap(0.14, 0.074, 1.5, 0.31)).toBe(0)
    close(gap(0.14, 0.074, 1.5, 0.15), gap(0.14, 0.074, 0.3, 0.15), { abs: 0, rel: 0 })
    expect(workedWoodShrinkage({ whole: 0.074, moisture: 0.15 }).standing).toBe('from memory')
  })
  it('doubles with a post of double size', () => close(gap(0.2, 0.05, 0.3, 0.1), 2 * gap(0.1, 0.05, 0.3, 0.1), { abs: 0, rel: 1e-12 }))
  it('closes with depth: full at the top, half at half way, shut at its reach', () => {
    const at = (below: number) => jointGapAt({ gap: m(0.002), reach: wedgeReach.value, below: m(below) })
    expect([at(0), at(wedgeReach.value), at(2)]).toEqual([0.002, 0, 0])
    close(at(wedgeReach.value / 2), 0.001, { abs: 1e-15, rel: 0 })
    expect(wedgeReach).toMatchObject({ printed: 12, standing: 'assumed here' })
  })
  it('holds the water of its own wedge: the integral of the gap along the perimeter', () => {
    const steps = 1000
    const [diameter, top, reach] = [0.2, 0.002, 0.3]
    let sum = 0
    for (let i = 0; i < steps; i++) {
      const below = (reach * (i + 0.5)) / steps
      sum += (Math.PI * diameter * jointGapAt({ gap: m(top), reach: m(reach), below: m(below) })) / 2 / (steps / reach)
    }
    close(roundJointVolume({ diameter: m(diameter), gap: m(top), reach: m(reach), shape: 'wedge' }), sum, { abs: 0, rel: 1e-9 })
    const square = { width: m(0.14), depth: m(0.19), gapWidth: m(0.002), gapDepth: m(0.003), reach: m(0.3), shape: 'even' } as const
    close(workedJointVolume(square).value, (0.002 * 0.19 + 0.003 * 0.14) * 0.3, { abs: 0, rel: 1e-12 })
    expect(workedRoundJointVolume({ diameter: m(0.2), gap: m(0.002), reach: m(0.3), shape: 'even' }).value).toBe(
      2 * roundJointVolume({ diameter: m(0.2), gap: m(0.002), reach: m(0.3), shape: 'wedge' }),
    )
  })
})

describe('water in the joint', () => {
  it('runs with the square of the width and is held in inverse', () => {
    fc.assert(
      fc.property(unit(1e-5, 0.01), (width) => {
        close(jointConductivity({ gap: m(2 * width) }), 4 * jointConductivity({ gap: m(width) }), { abs: 0, rel: 1e-12 })
        const hold = (gapWidth: number) => capillaryHold({ gap: m(gapWidth), water: waterUnitWeight.value }) ?? Number.NaN
        close(2 * hold(2 * width), hold(width), { abs: 0, rel: 1e-12 })
      }),
    )
    expect(jointConductivity({ gap: m(0) })).toBe(0)
    expect(capillaryHold({ gap: m(0), water: waterUnitWeight.value })).toBeNull()
  })
  it('any joint of a quarter millimetre beats the fastest soil of the table', () => {
    const joint = jointConductivity({ gap: m(0.00025) })
    for (const { conductivity } of Object.values(textures)) {
      expect(conductivityRatio({ joint, other: conductivity.value })).toBeGreaterThan(1000)
      expect(workedConductivityRatio({ joint, other: conductivity.value }).value).toBe(
        conductivityRatio({ joint, other: conductivity.value }),
      )
    }
  })
  it('a group spans its species', () => {
    for (const group of ['southern-pine', 'hem-fir', 'cedar'] as const) {
      const { low, high } = groupShrinkage(group, 'radial')
      expect(low.value).toBeLessThan(high.value)
    }
  })
})
