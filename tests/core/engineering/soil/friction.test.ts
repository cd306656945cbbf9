import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { betaLowerBound, workedBetaLowerBound } from '../../../../src/core/engineering/soil/betaLowerBound.ts'
import { betaRational } from '../../../../src/core/engineering/soil/betaRational.ts'
import { buoyantWeight } from '../../../../src/core/engineering/soil/buoyantWeight.ts'
import { sideFriction, sideFrictionByBeta } from '../../../../src/core/engineering/soil/sideFriction.ts'
import { soilCone, soilConeRectangular } from '../../../../src/core/engineering/soil/soilCone.ts'
import { userFriction, workedUserFriction } from '../../../../src/core/engineering/soil/userFriction.ts'
import type { Metres, Pascals, Radians, UnitWeight } from '../../../../src/core/units/quantity.ts'
import { cubicMetres, metres, pascals, radians, unitWeight } from '../../../../src/core/units/quantity.ts'
import { close } from '../../../close.ts'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const water = unitWeight(9806.65)
const ground = (moist: number) => [
  { thickness: metres(1), moist: unitWeight(moist), saturated: unitWeight(moist + 1500) },
  { thickness: metres(50), moist: unitWeight(moist + 500), saturated: unitWeight(moist + 2000) },
]

describe('side friction', () => {
  const of = (to: number, waterTable: number | null, moist = 17_000) =>
    sideFrictionByBeta({
      beta: () => 0.29,
      layers: ground(moist),
      waterTable: waterTable as Metres | null,
      water,
      perimeter: metres(1.5),
      from: metres(0.3),
      to: metres(to),
    })

  it('deeper is not weaker, higher water is not stronger', () => {
    fc.assert(
      fc.property(between(0.3, 4), between(0, 4), between(0, 1), (to, level, rise) => {
        expect(of(to + 0.1, level)).toBeGreaterThanOrEqual(of(to, level))
        expect(of(to, Math.max(0, level - rise))).toBeLessThanOrEqual(of(to, level) * (1 + 1e-12))
        expect(of(to, level)).toBeLessThanOrEqual(of(to, null) * (1 + 1e-12))
      }),
    )
  })
  it('is exact for one beta: p beta times the area under the stress', () => {
    const [g1, g2] = [17_000, 17_500]
    const stressTop = 0.3 * g1
    const stressBreak = 1 * g1
    const stressBottom = stressBreak + 1 * g2
    const byHand = 1.5 * 0.29 * (((stressTop + stressBreak) / 2) * 0.7 + ((stressBreak + stressBottom) / 2) * 1)
    close(of(2, null), byHand, { abs: 0, rel: 1e-13 })
  })
  it('counts nothing over no length, and the whole is the sum of its parts', () => {
    expect(of(0.3, null)).toBe(0)
    expect(of(0.1, null)).toBe(0)
    const part = (from: number, to: number) =>
      sideFrictionByBeta({
        beta: (z) => 1.5 - 0.2 * Math.sqrt(z),
        layers: ground(17_000),
        waterTable: metres(1.4),
        water,
        perimeter: metres(1),
        from: metres(from),
        to: metres(to),
      })
    close(part(0, 1) + part(1, 1.4) + part(1.4, 2.4), part(0, 2.4), { abs: 0, rel: 1e-9 })
  })
  it('the user answers for their own value: no further factor', () => {
    const given = { allowable: pascals(4000), perimeter: metres(1.5), length: metres(1) }
    expect(userFriction(given)).toBe(6000)
    expect(workedUserFriction(given)).toMatchObject({ standing: 'assumed here', sources: ['user'] })
    expect(sideFriction({ shear: pascals(4000), perimeter: metres(1.5), length: metres(1) })).toBe(6000)
  })
})

describe('beta', () => {
  it('the lower bound stays under the rational form, which has credit for overconsolidation', () => {
    fc.assert(
      fc.property(between(20, 42), between(3, 50), between(2000, 60_000), (degrees, blows, stress) => {
        const frictionAngle = radians((degrees * Math.PI) / 180)
        const rational = betaRational({ frictionAngle, blows, stress: stress as Pascals, exponent: 0.6, atmosphere: pascals(101_325) })
        expect(rational.beta).toBeGreaterThanOrEqual(betaLowerBound({ frictionAngle }) * (1 - 1e-12))
        expect(rational.atRest).toBeLessThanOrEqual(rational.passive)
      }),
    )
  })
  it('is honest about whose choice it is', () => {
    expect(workedBetaLowerBound({ frictionAngle: 0.5 as Radians }).standing).toBe('computed here')
  })
})

describe('weight and cones', () => {
  it('weight falls as water rises', () => {
    const of = (below: number) =>
      buoyantWeight({
        dry: 22_800 as UnitWeight,
        saturated: 22_800 as UnitWeight,
        water,
        above: cubicMetres(2 - below),
        below: cubicMetres(below),
      })
    fc.assert(
      fc.property(between(0, 1.9), between(0, 0.1), (below, more) => {
        expect(of(below + more)).toBeLessThanOrEqual(of(below))
      }),
    )
  })
  it('a cone grows with its ledge, height and angle', () => {
    fc.assert(
      fc.property(between(0.1, 1), between(0.1, 3), between(0.05, 0.7), (radius, height, angle) => {
        const of = (r: number, h: number, t: number) => soilCone({ radius: metres(r), height: metres(h), angle: radians(t) }).volume
        const here = of(radius, height, angle)
        expect(of(radius * 1.1, height, angle)).toBeGreaterThan(here)
        expect(of(radius, height * 1.1, angle)).toBeGreaterThan(here)
        expect(of(radius, height, angle + 0.05)).toBeGreaterThan(here)
        // Rounded corners: a square ledge gives less than the circle round it and more than the circle in it.
        const square = soilConeRectangular({ a: metres(2 * radius), b: metres(2 * radius), height: metres(height), angle: radians(angle) })
        expect(square).toBeGreaterThan(here)
        expect(square).toBeLessThan(of(radius * Math.SQRT2, height, angle))
      }),
    )
  })
})
