import { describe, it } from 'vitest'
import { developmentCompression, developmentGeneral } from '../../../src/core/engineering/concrete/development.ts'
import { barGrades, bars } from '../../../src/core/engineering/tables/bars.ts'
import type { Pascals } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, published, readCases } from '../cases.ts'

describe('development by the equations', () => {
  const bar = { diameter: bars['#3'].diameter.value, yield: barGrades['40'].yield.value, strength: at<Pascals>(3000, 'psi') }
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const tension = developmentGeneral({ ...bar, top: true, epoxy: 1.5, confinement: 2.5 })
    published(tension, row, '=tension_in', 'in')
    published(Math.max(tension, at(12, 'in')), row, '=used_in', 'in')
    const { byStrength, byYield, length } = developmentCompression({ ...bar, confining: 1 })
    published(byStrength, row, '=by-strength_in', 'in')
    published(byYield, row, '=by-yield_in', 'in')
    published(length, row, '=compression_in', 'in')
  })
  it('No. 7 Grade 60, 4000 psi: 28.46 diameters; the 2014 commentary prints 28.55 by way of metric units', () => {
    const seven = { diameter: bars['#7'].diameter.value, yield: barGrades['60'].yield.value, strength: at<Pascals>(4000, 'psi') }
    const ratio = developmentGeneral({ ...seven, top: false, epoxy: 1, confinement: 2.5 }) / seven.diameter
    close(ratio, 28.46, { abs: 0.005, rel: 0 })
    close(ratio, 28.55, { abs: 0, rel: 0.004 })
  })
})
