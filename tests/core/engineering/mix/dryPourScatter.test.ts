import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dryPourScatter, scatterClasses, scatterField } from '../../../../src/core/engineering/mix/dryPourScatter.ts'
import { seededNoise } from '../../../../src/core/engineering/mix/seededNoise.ts'

const unit = fc.double({ min: 0, max: 1, noNaN: true })
const seeds = fc.integer({ min: -2147483648, max: 2147483647 })
const field = (seed: number, shortest: number, longest: number) =>
  scatterField({ seed, wetted: { shortest, longest }, rows: 24, columns: 12 })

describe('a picture of a dry pour', () => {
  it('is the same for the same seed, and another for another', () => {
    expect(field(7, 0.4, 0.8)).toEqual(field(7, 0.4, 0.8))
    expect(field(7, 0.4, 0.8)).not.toEqual(field(8, 0.4, 0.8))
  })
  it('never changes between machines: a few cells of one seed, as drawn when this was written', () => {
    const letters = field(1, 0.5, 0.9).map((row) => row.map((one) => one[0]).join(''))
    expect([letters[0], letters[11], letters[17], letters[23]]).toEqual(['sswccwssssss', 'wwwccwssssss', 'swccccsssccp', 'pppppppppppp'])
  })
  it('is powder below the longest reach of water, and none above the shortest', () => {
    fc.assert(
      fc.property(seeds, unit, unit, unit, unit, (seed, a, b, across, down) => {
        const wetted = { shortest: Math.min(a, b), longest: Math.max(a, b) }
        const found = dryPourScatter({ seed, wetted })(across, down)
        expect(scatterClasses).toContain(found)
        if (down > wetted.longest) expect(found).toBe('powder')
        if (down < wetted.shortest) expect(found).not.toBe('powder')
      }),
    )
  })
  it('wholly wetted has no powder; never wetted is powder', () => {
    expect(field(3, 1, 1).flat()).not.toContain('powder')
    expect(new Set(field(3, 0, 0).flat())).toEqual(new Set(['powder']))
  })
  it('gives classes and no number', () => {
    for (const one of field(5, 0.3, 0.9).flat()) expect(typeof one).toBe('string')
  })
})

describe('the noise behind it', () => {
  it('lies between 0 and 1, is smooth, and is even over many seeds', () => {
    fc.assert(
      fc.property(seeds, fc.double({ min: -50, max: 50, noNaN: true }), fc.double({ min: -50, max: 50, noNaN: true }), (seed, u, v) => {
        const here = seededNoise(seed, u, v)
        expect(here).toBeGreaterThanOrEqual(0)
        expect(here).toBeLessThanOrEqual(1)
        // The easing is nowhere steeper than 3/2 of a unit step.
        expect(Math.abs(seededNoise(seed, u + 0.001, v) - here)).toBeLessThanOrEqual(0.0016)
      }),
    )
    const mean = Array.from({ length: 4000 }, (_, seed) => seededNoise(seed, 3, 5)).reduce((a, b) => a + b, 0) / 4000
    // Standard error of the mean of an even spread: 0.29/sqrt(4000) = 0.0046.
    expect(Math.abs(mean - 0.5)).toBeLessThan(0.02)
  })
})
