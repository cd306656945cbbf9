import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  capillaryRiseOfGrain,
  fringeTop,
  riseConstant,
  workedCapillaryRiseOfGrain,
  workedFringeTop,
} from '../../../../src/core/engineering/moisture/capillaryFringe.ts'
import { soilWetnessAt, soilWetnesses } from '../../../../src/core/engineering/moisture/soilWetness.ts'
import type { Metres } from '../../../../src/core/units/quantity.ts'
import { close } from '../../../close.ts'

const m = (value: number) => value as Metres
const rise = { low: m(0.125), high: m(0.5) }
const at = (
  depth: number,
  waterTable: number | null,
  ground: (typeof soilWetnesses)[number] = 'drains',
  reach: Readonly<{ low: Metres | null; high: Metres | null }> = rise,
) => soilWetnessAt({ depth: m(depth), waterTable: waterTable === null ? null : m(waterTable), ground, rise: reach })

describe('wetness of the ground', () => {
  it.each([
    [0.2, null, 'drains', false, 'ground-as-entered'],
    [0.2, 2, 'drains', false, 'ground-as-entered'],
    [1.6, 2, 'damp', false, 'in-reach-of-capillary-rise'],
    [1.9, 2, 'wet', false, 'in-capillary-fringe'],
    [2, 2, 'wet', true, 'below-water-table'],
    [3, 2, 'wet', true, 'below-water-table'],
  ] as const)('%s m down with water at %s m: %s', (depth, waterTable, wetness, underWater, reason) => {
    expect(at(depth, waterTable)).toMatchObject({ wetness, underWater, reason })
  })
  it('never gets drier with depth, with higher water or with wetter ground', () => {
    const order = (wetness: (typeof soilWetnesses)[number]) => soilWetnesses.indexOf(wetness)
    const depth = fc.double({ min: 0, max: 3, noNaN: true })
    fc.assert(
      fc.property(depth, depth, depth, fc.constantFrom(...soilWetnesses), (d, w, more, ground) => {
        const here = order(at(d, w, ground).wetness)
        expect(order(at(d + more, w, ground).wetness)).toBeGreaterThanOrEqual(here)
        expect(order(at(d, w - Math.min(w, more), ground).wetness)).toBeGreaterThanOrEqual(here)
        expect(order(at(d, w, 'wet').wetness)).toBe(2)
      }),
    )
  })
  it('where no greatest rise is known, ground above the least may be damp all the way up', () => {
    const clay = { low: m(1), high: null }
    expect(at(0.1, 3, 'drains', clay).wetness).toBe('damp')
    expect(at(2.5, 3, 'drains', clay).wetness).toBe('wet')
    expect(at(0.1, 3, 'drains', { low: null, high: null }).wetness).toBe('drains')
  })
})

describe('capillary rise', () => {
  it('fringe ends at the surface', () => {
    expect(fringeTop({ waterTable: m(0.3), rise: m(0.5) })).toBe(0)
    close(workedFringeTop({ waterTable: m(2), rise: m(0.5) }).value, 1.5, { abs: 0, rel: 0 })
  })
  it('by grain: a silt of 0.018 mm with void ratio 0.7 and 0.5 cm2 has 4 m, far more than measured', () => {
    const inputs = { constant: riseConstant.high.value, voidRatio: 0.7, grain: m(0.018e-3) }
    // 0.5 cm2/(0.7 x 0.0018 cm) = 397 cm.
    close(capillaryRiseOfGrain(inputs), 3.97, { abs: 0.005, rel: 0 })
    expect(workedCapillaryRiseOfGrain(inputs).standing).toBe('from memory')
  })
})
