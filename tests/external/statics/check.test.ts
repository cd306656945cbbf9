import { describe, expect, it } from 'vitest'
import { materialWeights, waterUnitWeight } from '../../../src/core/engineering/tables/materials.ts'
import { buoyantWeight, workedBuoyantWeight } from '../../../src/core/engineering/soil/buoyantWeight.ts'
import { deadLoadShare, factoredDeadLoad } from '../../../src/core/engineering/soil/factoredDeadLoad.ts'
import { effectiveStress, stressBreaks } from '../../../src/core/engineering/soil/verticalStress.ts'
import type { CubicMetres, Metres, UnitWeight } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, has, published, readCases, si } from '../cases.ts'

describe('weight of a shaft that stands partly in water', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const area = (Math.PI * si(row, 'D_ft', 'ft') ** 2) / 4
    const length = si(row, 'L_ft', 'ft')
    const above = has(row, 'water_ft') ? si(row, 'water_ft', 'ft') : length
    const concrete = materialWeights['concrete-plain'].unitWeight.value
    const inputs = {
      dry: concrete,
      saturated: concrete,
      water: waterUnitWeight.value,
      above: (area * above) as CubicMetres,
      below: (area * (length - above)) as CubicMetres,
    }
    const weight = buoyantWeight(inputs)
    published(weight, row, '=W_lb', 'lb')
    published(factoredDeadLoad({ weight, share: deadLoadShare.value }), row, '=share_lb', 'lb')
    expect(workedBuoyantWeight(inputs).value).toBe(weight)
  })
})

describe('effective stress in layered ground', () => {
  const layer = (thickness: number, moist: number, saturated: number) => ({
    thickness: at<Metres>(thickness, 'ft'),
    moist: at<UnitWeight>(moist, 'pcf'),
    saturated: at<UnitWeight>(saturated, 'pcf'),
  })
  const layers = [layer(3, 100, 120), layer(100, 110, 130)]
  const stress = (water: number | null, depth: number) =>
    effectiveStress(layers, water === null ? null : at(water, 'ft'), at(62.4, 'pcf'), at(depth, 'ft'))

  it.each([
    [null, 2, 200],
    [null, 5, 3 * 100 + 2 * 110],
    [4, 5, 3 * 100 + 1 * 110 + 1 * (130 - 62.4)],
    [1, 5, 100 + 2 * (120 - 62.4) + 2 * (130 - 62.4)],
    [0, 3, 3 * (120 - 62.4)],
  ])('water at %s ft, %s ft down: %s psf by hand', (water, depth, psf) => {
    close(stress(water, depth), at(psf, 'psf'), { abs: 0, rel: 1e-12 })
  })

  it('lists where the slope changes', () => {
    expect(stressBreaks(layers, 1.5 as Metres, 0 as Metres, 2 as Metres)).toEqual([0, layers[0]?.thickness, 1.5, 2])
  })
})
