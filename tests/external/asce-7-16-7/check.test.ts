import { describe, expect, it } from 'vitest'
import { governingLoads } from '../../../src/core/engineering/loads/combine.ts'
import { flatRoofSnow, snowFactors, workedFlatRoofSnow } from '../../../src/core/engineering/loads/snow.ts'
import type { Newtons, Pascals } from '../../../src/core/units/quantity.ts'
import { at, digits, published, readCases, si } from '../cases.ts'

describe('flat roof snow', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const inputs = {
      ground: si<Pascals>(row, 'pg_psf', 'psf'),
      exposure: digits(row, 'Ce'),
      thermal: snowFactors.thermal.openOrUnheated.value,
      importance: digits(row, 'Is'),
      lowSlope: false,
    }
    const pf = flatRoofSnow(inputs)
    published(pf, row, '=pf_psf', 'psf')
    expect(workedFlatRoofSnow(inputs).value).toBe(pf)
    const area = at<number>(144, 'ft2')
    const loads = { dead: (at<number>(5, 'psf') * area) as Newtons, snow: (pf * area) as Newtons }
    published(governingLoads('7-16', 'ASD', loads).down.load, row, '=D+S_lb', 'lb')
    published(governingLoads('7-22', 'ASD', loads).down.load, row, '=D+0.7S_lb', 'lb')
  })
  it('a low slope has a least load', () => {
    const roof = { exposure: 0.9, thermal: 1, importance: 1, lowSlope: true }
    expect(flatRoofSnow({ ...roof, ground: at(10, 'psf') })).toBeCloseTo(at(10, 'psf'), 6)
    expect(flatRoofSnow({ ...roof, ground: at(25, 'psf') })).toBeCloseTo(at(20, 'psf'), 6)
    expect(flatRoofSnow({ ...roof, ground: at(100, 'psf') })).toBeCloseTo(at(63, 'psf'), 6)
  })
})
