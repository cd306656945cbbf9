import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  frontDepth,
  infiltrated,
  infiltrationRate,
  infiltrationTime,
  workedFrontDepth,
  workedInfiltrated,
  workedInfiltrationRate,
  workedInfiltrationTime,
  workedMoistureDeficit,
} from '../../../../src/core/engineering/moisture/greenAmpt.ts'
import {
  philipInfiltrated,
  philipRate,
  sharpFrontSorptivity,
  workedPhilipInfiltrated,
} from '../../../../src/core/engineering/moisture/philip.ts'
import { pondingStart, rainTaken, workedPondingStart, workedRainTaken } from '../../../../src/core/engineering/moisture/steadyRain.ts'
import { textures } from '../../../../src/core/engineering/tables/infiltration.ts'
import type { Metres, MetresPerSecond, Seconds } from '../../../../src/core/units/quantity.ts'
import { close } from '../../../close.ts'

const s = (value: number) => value as Seconds
const soils = Object.entries(textures).map(
  ([id, { conductivity, suction, effectivePorosity }]) =>
    [id, { conductivity: conductivity.value, suction: suction.value, deficit: 0.7 * effectivePorosity.value }] as const,
)
const anySoil = fc.constantFrom(...soils.map(([, soil]) => soil))
const anyTime = fc.double({ min: 1, max: 1e6, noNaN: true }).map(s)
const none = Number.NaN

describe('water taken under standing water', () => {
  it.each(soils)('%s: the same as stepping the rate along in time', (_, soil) => {
    // dF/dt = K (1 + a/F); u = F^2 is smooth at the start: du/dt = 2 K (sqrt u + a). Fourth-order steps, nothing of the closed form.
    const a = soil.suction * soil.deficit
    const slope = (u: number) => 2 * soil.conductivity * (Math.sqrt(Math.max(u, 0)) + a)
    const steps = 20_000
    const h = 3600 / steps
    let u = 0
    for (let i = 0; i < steps; i++) {
      const k1 = slope(u)
      const k2 = slope(u + (h * k1) / 2)
      const k3 = slope(u + (h * k2) / 2)
      const k4 = slope(u + h * k3)
      u += (h * (k1 + 2 * k2 + 2 * k3 + k4)) / 6
    }
    // The square root at the start costs the first step its order.
    close(infiltrated({ ...soil, time: s(3600) }), Math.sqrt(u), { abs: 0, rel: 1e-6 })
  })
  it('the time to take it is the time it was given', () => {
    fc.assert(
      fc.property(anySoil, anyTime, (soil, time) => {
        const depth = infiltrated({ ...soil, time })
        close(infiltrationTime({ ...soil, infiltrated: depth }), time, { abs: 0, rel: 1e-8 })
        close((frontDepth({ infiltrated: depth, deficit: soil.deficit }) ?? none) * soil.deficit, depth, { abs: 0, rel: 1e-12 })
      }),
    )
  })
  it('grows with time, with suction and with conductivity, ever more slowly', () => {
    fc.assert(
      fc.property(anySoil, anyTime, (soil, time) => {
        const depth = infiltrated({ ...soil, time })
        expect(infiltrated({ ...soil, time: s(2 * time) })).toBeGreaterThan(depth)
        expect(infiltrated({ ...soil, time: s(2 * time) })).toBeLessThan(2 * depth)
        expect(infiltrated({ ...soil, suction: (2 * soil.suction) as Metres, time })).toBeGreaterThan(depth)
        expect(infiltrated({ ...soil, conductivity: (2 * soil.conductivity) as MetresPerSecond, time })).toBeGreaterThan(depth)
        const rate = infiltrationRate({ ...soil, infiltrated: depth }) ?? none
        expect(rate).toBeGreaterThan(soil.conductivity)
        expect(infiltrationRate({ ...soil, infiltrated: (2 * depth) as Metres }) ?? none).toBeLessThan(rate)
      }),
    )
  })
  it('starts at nothing, with no rate, and soil with no room takes water at K', () => {
    const [, soil] = soils[0] as (typeof soils)[number]
    expect(infiltrated({ ...soil, time: s(0) })).toBe(0)
    expect(infiltrationRate({ ...soil, infiltrated: 0 as Metres })).toBeNull()
    close(infiltrated({ ...soil, deficit: 0, time: s(100) }), 100 * soil.conductivity, { abs: 0, rel: 1e-12 })
    expect(frontDepth({ infiltrated: 1 as Metres, deficit: 0 })).toBeNull()
  })
  it('for short times is the two-term form with its own sorptivity', () => {
    for (const [, soil] of soils) {
      const sorptivity = sharpFrontSorptivity(soil)
      const early = { sorptivity, conductivity: 0 as MetresPerSecond, time: s(0.01) }
      close(infiltrated({ ...soil, time: s(0.01) }), philipInfiltrated(early), { abs: 0, rel: 0.01 })
      close(philipRate({ ...early, time: s(4) }) ?? none, sorptivity / 4, { abs: 0, rel: 1e-12 })
    }
    expect(philipRate({ sorptivity: 1, conductivity: 0 as MetresPerSecond, time: s(0) })).toBeNull()
  })
})

describe('steady rain', () => {
  it('is all taken until water stands, and less after, never more than fell', () => {
    fc.assert(
      fc.property(anySoil, fc.double({ min: 0.1, max: 20, noNaN: true }), anyTime, (soil, times, time) => {
        const rain = (times * soil.conductivity) as MetresPerSecond
        const start = pondingStart({ ...soil, rain })
        const taken = rainTaken({ ...soil, rain, time })
        expect(taken).toBeLessThanOrEqual(rain * time * (1 + 1e-12))
        if (start === null || time <= start) close(taken, rain * time, { abs: 0, rel: 1e-12 })
        else expect(taken).toBeGreaterThanOrEqual(rain * start)
        expect(start === null).toBe(times <= 1)
      }),
    )
  })
  it('at the moment when water stands, the ground takes just what falls', () => {
    for (const [, soil] of soils) {
      const rain = (3 * soil.conductivity) as MetresPerSecond
      const start = pondingStart({ ...soil, rain }) ?? s(0)
      close(infiltrationRate({ ...soil, infiltrated: (rain * start) as Metres }) ?? none, rain, { abs: 0, rel: 1e-9 })
    }
  })
})

describe('shown with their work', () => {
  it('each gives the value of its function', () => {
    const [, soil] = soils[3] as (typeof soils)[number]
    const rain = (3 * soil.conductivity) as MetresPerSecond
    expect(workedInfiltrated({ ...soil, time: s(3600) })).toMatchObject({ quantity: 'length', standing: 'read' })
    expect(workedInfiltrationRate({ ...soil, infiltrated: 0.01 as Metres })?.quantity).toBe('rain')
    expect(workedInfiltrationTime({ ...soil, infiltrated: 0.01 as Metres }).quantity).toBe('duration')
    expect(workedFrontDepth({ infiltrated: 0.01 as Metres, deficit: 0.3 })?.value).toBeCloseTo(0.0333333, 6)
    expect(workedMoistureDeficit({ effectivePorosity: 0.4, saturation: 0.25 }).value).toBeCloseTo(0.3, 12)
    expect(workedPondingStart({ ...soil, rain })?.value).toBe(pondingStart({ ...soil, rain }))
    expect(workedRainTaken({ ...soil, rain, time: s(3600) }).value).toBe(rainTaken({ ...soil, rain, time: s(3600) }))
    expect(workedPhilipInfiltrated({ sorptivity: 1e-4, conductivity: soil.conductivity, time: s(60) }).quantity).toBe('length')
  })
})
