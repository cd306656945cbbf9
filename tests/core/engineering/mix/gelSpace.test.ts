import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  gelSpaceRatio,
  placedStrengthRatio,
  strengthRatio,
  workedGelSpaceRatio,
  workedPlacedStrengthRatio,
} from '../../../../src/core/engineering/mix/gelSpace.ts'
import { hydrationLimit, workedHydrationLimit } from '../../../../src/core/engineering/mix/hydrationDegree.ts'
import { close } from '../../../close.ts'

const unit = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const reference = { space: 0.55, hydration: 0.8 }
const none = Number.NaN

describe('hydration that water allows', () => {
  it.each([
    [0.21, 'sealed', 0.5],
    [0.42, 'sealed', 1],
    [0.6, 'sealed', 1],
    [0.18, 'outsideWater', 0.5],
    [0.36, 'outsideWater', 1],
    [0, 'sealed', 0],
  ] as const)('ratio %s, %s: %s', (ratio, curing, share) => {
    close(hydrationLimit({ ratio, curing }), share, { abs: 1e-12, rel: 0 })
    expect(workedHydrationLimit({ ratio, curing }).value).toBe(hydrationLimit({ ratio, curing }))
  })
})

describe('strength as a ratio', () => {
  it('is 1 for the known mix, grows with hydration and falls with space', () => {
    expect(strengthRatio({ mix: reference, reference, exponent: 3 })).toBe(1)
    fc.assert(
      fc.property(unit(0.05, 0.95), unit(0.2, 2), unit(0.01, 0.05), unit(2.6, 3), (hydration, space, more, exponent) => {
        const ratio = (a: number, s: number) => strengthRatio({ mix: { hydration: a, space: s }, reference, exponent }) ?? none
        expect(ratio(hydration + more, space)).toBeGreaterThan(ratio(hydration, space))
        expect(ratio(hydration, space + more)).toBeLessThan(ratio(hydration, space))
      }),
    )
  })
  it('mix that stayed dry has none', () => {
    const dry = { ratio: 0, space: 1.257, curing: 'sealed', hydration: 0.8, reference, exponent: 3 } as const
    expect(placedStrengthRatio(dry)).toBe(0)
    expect(workedPlacedStrengthRatio(dry)?.standing).toBe('from memory')
  })
  it('more water helps no further once all the cement can hydrate: the space stays', () => {
    const at = (ratio: number) =>
      placedStrengthRatio({ ratio, space: 1.257, curing: 'sealed', hydration: 0.8, reference, exponent: 3 }) ?? none
    expect(at(0.2)).toBeLessThan(at(0.3))
    expect(at(1.2)).toBe(at(0.42))
    close(at(1.2), 0.151, { abs: 0.0005, rel: 0 })
  })
  it('compaction matters more than time: the same cement packed to its yield', () => {
    const at = (space: number, hydration: number) =>
      placedStrengthRatio({ ratio: 0.6, space, curing: 'sealed', hydration, reference, exponent: 3 }) ?? none
    expect(at(0.623, 0.8) / at(1.257, 0.8)).toBeGreaterThan(at(1.257, 1) / at(1.257, 0.8))
  })
  it('has no value where there is nothing', () => {
    expect(gelSpaceRatio({ hydration: 0, space: 0, coefficients: 'powers' })).toBeNull()
    expect(strengthRatio({ mix: reference, reference: { space: 0.5, hydration: 0 }, exponent: 3 })).toBeNull()
    expect(workedGelSpaceRatio({ hydration: 0.5, space: 0.5, coefficients: 'textbook' })?.formula).toContain('0.657')
  })
})
