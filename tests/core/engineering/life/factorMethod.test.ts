import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  estimatedLife,
  estimatedLifeBand,
  factorBounds,
  factorsOutside,
  lifeFactors,
  neutralFactors,
} from '../../../../src/core/engineering/life/factorMethod.ts'
import { sources } from '../../../../src/core/engineering/sources.ts'
import type { Seconds } from '../../../../src/core/units/quantity.ts'
import { close } from '../../../close.ts'

const factor = fc.double({ min: 0.5, max: 1.5, noNaN: true })
const factors = fc.record({ A: factor, B: factor, C: factor, D: factor, E: factor, F: factor, G: factor })
const life = fc.double({ min: 1e6, max: 1e10, noNaN: true }).map((value) => value as Seconds)

describe('the factor method', () => {
  it('[trap 8] sets no factor by itself: the standard gives no values', () => {
    for (const letter of lifeFactors) expect(neutralFactors[letter]).toBe(1)
    expect(sources['iso-15686-8-scope'].standing).toBe('read')
    expect([factorBounds.low.source, factorBounds.high.source]).toEqual(['factor-bounds', 'factor-bounds'])
  })
  it('leaves the reference alone with neutral factors, and moves with each', () => {
    fc.assert(
      fc.property(life, factors, fc.constantFrom(...lifeFactors), (reference, given, letter) => {
        close(estimatedLife({ reference, factors: neutralFactors }), reference, { abs: 0, rel: 0 })
        const here = estimatedLife({ reference, factors: given })
        expect(estimatedLife({ reference, factors: { ...given, [letter]: given[letter] * 1.1 } })).toBeGreaterThan(here)
      }),
    )
  })
  it('a range holds every life between its ends', () => {
    fc.assert(
      fc.property(life, factors, factors, fc.double({ min: 0, max: 1, noNaN: true }), (reference, a, b, t) => {
        const pick = (choose: (x: number, y: number) => number) =>
          Object.fromEntries(lifeFactors.map((letter) => [letter, choose(a[letter], b[letter])])) as typeof a
        const band = estimatedLifeBand({ reference: { low: reference, high: reference }, low: pick(Math.min), high: pick(Math.max) })
        const between = estimatedLife({ reference, factors: pick((x, y) => x + t * (y - x)) })
        expect(between).toBeGreaterThanOrEqual(band.low * (1 - 1e-12))
        expect(between).toBeLessThanOrEqual(band.high * (1 + 1e-12))
      }),
    )
  })
  it('names factors outside the customary bounds and cuts none back', () => {
    expect(factorsOutside({ ...neutralFactors, B: 0.8, C: 1.2 })).toEqual([])
    const given = { ...neutralFactors, A: 0.5, G: 1.3 }
    expect(factorsOutside(given)).toEqual(['A', 'G'])
    close(estimatedLife({ reference: 100 as Seconds, factors: given }), 65, { abs: 1e-9, rel: 0 })
  })
})
