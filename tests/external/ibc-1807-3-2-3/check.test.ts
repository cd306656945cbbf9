import { describe, expect, it } from 'vitest'
import { bearingGross, bearingNet } from '../../../src/core/engineering/soil/bearing.ts'
import { presumptiveSoils } from '../../../src/core/engineering/tables/soils.ts'
import type { CubicMetres, Newtons, SquareMetres, UnitWeight } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, has, published, readCases, si } from '../cases.ts'

describe('bearing under a pier', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const area = ((Math.PI * si(row, 'D_in', 'in') ** 2) / 4) as SquareMetres
    const load = si<Newtons>(row, 'N_lb', 'lb')
    published(area, row, '=area_ft2', 'ft2')
    published(bearingGross({ load, weight: 0 as Newtons, area }), row, '=load_only_psf', 'psf')
    if (!has(row, 'L_ft')) return
    const volume = (area * si(row, 'L_ft', 'ft')) as CubicMetres
    const weight = (si<UnitWeight>(row, 'gc_pcf', 'pcf') * volume) as Newtons
    published(bearingNet({ load, weight, area, volume, soil: si(row, 'gs_pcf', 'pcf') }), row, '=net_psf', 'psf')
  })

  it('W2.12: gross 1,599 psf', () => {
    // 3200/3.1416 + 145 x 4 = 1598.6: the worked figure is rounded up.
    const area = (Math.PI * at<number>(1, 'ft') ** 2) as SquareMetres
    const weight = (area * at<number>(4, 'ft') * at<number>(145, 'pcf')) as Newtons
    close(bearingGross({ load: at(3200, 'lb'), weight, area }), at(1599, 'psf'), { abs: at(0.5, 'psf'), rel: 0 })
  })

  it('W2.11: a 12 in tube on 1,500 psf carries 1,178 lb of the 3,200 and needs 19.78 in', () => {
    const q = presumptiveSoils.clay.bearing.value
    const area = (Math.PI * at<number>(6, 'in') ** 2) as SquareMetres
    expect(bearingGross({ load: at(3200, 'lb'), weight: 0 as Newtons, area })).toBeGreaterThan(q)
    close(q * area, at(1178, 'lb'), { abs: at(0.5, 'lb'), rel: 0 })
    close(Math.sqrt((4 * at<number>(3200, 'lb')) / (Math.PI * q)), at(19.78, 'in'), { abs: at(0.005, 'in'), rel: 0 })
    // Published in words: "about 75 % of a square foot" is 0.7854.
    close(area, at(0.75, 'ft2'), { abs: 0, rel: 0.05 })
  })
})
