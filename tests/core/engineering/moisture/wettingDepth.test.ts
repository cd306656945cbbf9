import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { wettingBand, wettingDepth, wettingRanges } from '../../../../src/core/engineering/moisture/wettingDepth.ts'
import type { CubicMetres, Metres, SquareMetres } from '../../../../src/core/units/quantity.ts'
import { close } from '../../../close.ts'

const unit = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const pours = fc.record({
  poured: unit(0, 0.1).map((v) => v as CubicMetres),
  loss: unit(0, 1),
  area: unit(0.01, 0.5).map((v) => v as SquareMetres),
  voids: unit(0.05, 0.6),
  saturation: unit(0.05, 1),
  height: unit(0, 2).map((v) => v as Metres),
})
type Pour = typeof pours extends fc.Arbitrary<infer T> ? T : never
const wet = (pour: Pour) => {
  const found = wettingDepth(pour)
  if (!found) throw new Error('no wetting')
  return found
}

describe('water poured on dry mix', () => {
  it('is neither made nor lost: lost, held and left over are what was poured', () => {
    fc.assert(
      fc.property(pours, (pour) => {
        const { lost, held, over, depth } = wet(pour)
        // To the last bit but the rounding of two subtractions.
        close(lost + held + over, pour.poured, { abs: 0, rel: 4 * Number.EPSILON })
        for (const part of [lost, held, over]) expect(part).toBeGreaterThanOrEqual(0)
        // What is held is what the wetted length has room for.
        close(depth * pour.area * pour.voids * pour.saturation, held, { abs: 1e-18, rel: 1e-12 })
      }),
      { numRuns: 2000 },
    )
  })
  it('holds exactly where the numbers are exact', () => {
    const pour = { poured: 0.75 as CubicMetres, loss: 0.25, area: 0.5 as SquareMetres, voids: 0.5, saturation: 0.5, height: 2 as Metres }
    const { lost, held, over, depth, reachesFoot } = wet(pour)
    expect([lost, held, over, depth, reachesFoot]).toEqual([0.1875, 0.25, 0.3125, 2, true])
    expect(lost + held + over).toBe(pour.poured)
  })
  it('reaches deeper with more water, less loss, less area, fewer voids, emptier voids', () => {
    fc.assert(
      fc.property(pours, (pour) => {
        const { depth } = wet(pour)
        expect(depth).toBeLessThanOrEqual(pour.height)
        const more = (change: Partial<Pour>) => wet({ ...pour, ...change }).depth * (1 + 1e-12)
        expect(more({ poured: (pour.poured * 1.5) as CubicMetres })).toBeGreaterThanOrEqual(depth)
        expect(more({ loss: pour.loss / 2 })).toBeGreaterThanOrEqual(depth)
        expect(more({ area: (pour.area / 2) as SquareMetres })).toBeGreaterThanOrEqual(depth)
        expect(more({ voids: pour.voids / 2 })).toBeGreaterThanOrEqual(depth)
        expect(more({ saturation: pour.saturation / 2 })).toBeGreaterThanOrEqual(depth)
        expect(wet(pour).reachesFoot).toBe(depth === pour.height)
      }),
    )
  })
  it('has no answer in a mix without room for water', () => {
    const pour = { poured: 0.01 as CubicMetres, loss: 0, area: 0.1 as SquareMetres, voids: 0, saturation: 1, height: 1 as Metres }
    expect(wettingDepth(pour)).toBeNull()
    expect(wettingBand({ ...pour, loss: { low: 0, high: 0 }, saturation: { low: 0.4, high: 1 } })).toBeNull()
  })
})

describe('the range of wetting', () => {
  it('holds every wetting whose loss and saturation lie inside the ranges, and each end keeps its balance', () => {
    const { loss, saturation } = wettingRanges
    const range = {
      loss: { low: loss.low.value, high: loss.high.value },
      saturation: { low: saturation.low.value, high: saturation.high.value },
    }
    fc.assert(
      fc.property(pours, unit(0, 1), unit(0, 1), (pour, s, t) => {
        const band = wettingBand({ ...pour, ...range })
        if (!band) throw new Error('no band')
        const inside = wet({
          ...pour,
          loss: range.loss.low + s * (range.loss.high - range.loss.low),
          saturation: range.saturation.low + t * (range.saturation.high - range.saturation.low),
        })
        expect(inside.depth * (1 + 1e-12)).toBeGreaterThanOrEqual(band.shortest.depth)
        expect(inside.depth).toBeLessThanOrEqual(band.longest.depth * (1 + 1e-12))
        for (const { lost, held, over } of [band.shortest, band.longest])
          close(lost + held + over, pour.poured, { abs: 0, rel: 4 * Number.EPSILON })
      }),
    )
    expect(loss.high.standing).toBe('assumed here')
  })
})
