import { describe, expect, it } from 'vitest'
import { barShear, barTension, barTensionFactors } from '../../../src/core/engineering/concrete/barSteel.ts'
import { barGrades, bars } from '../../../src/core/engineering/tables/bars.ts'
import { materialWeights } from '../../../src/core/engineering/tables/materials.ts'
import type { BarSize } from '../../../src/core/model/spec.ts'
import type { Pascals } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, has, published, readCases } from '../cases.ts'

describe('bars', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id ?? '', row] as const))('%s', (id, row) => {
    const { diameter, area, weight, perimeter } = bars[id.replace('No.', '#') as BarSize]
    published(diameter.value, row, '=dia_in', 'in')
    published(area.value, row, '=area_in2', 'in2')
    published(weight.value, row, '=weight_lb/ft', 'lb/ft')
    published(perimeter.value, row, '=perimeter_in', 'in')
    // The columns belong together: circle of the diameter, steel of 490 pcf.
    close(area.value, (Math.PI / 4) * diameter.value ** 2, { abs: at(0.0051, 'in2'), rel: 0 })
    close(perimeter.value, Math.PI * diameter.value, { abs: at(0.0006, 'in'), rel: 0 })
    close(weight.value, (Math.PI / 4) * diameter.value ** 2 * materialWeights.steel.unitWeight.value, { abs: 0, rel: 2e-3 })
    const sixty = barGrades['60'].yield.value
    if (has(row, '=shear_kip')) {
      published(barShear({ area: area.value, yield: sixty, planes: 1 }), row, '=shear_kip', 'kip')
      published(0.9 * 0.6 * sixty * area.value, row, '=shear_lrfd_kip', 'kip')
    }
  })
  it('a vertical No. 4 carries 10.8 kip at strength level, 4.8 kip at 24 ksi', () => {
    const area = bars['#4'].area.value
    close(
      barTension({ area, stress: (barTensionFactors.reduction.value * barGrades['60'].yield.value) as Pascals, count: 1 }),
      at(10.8, 'kip'),
      { abs: at(0.05, 'kip'), rel: 0 },
    )
    close(barTension({ area, stress: barTensionFactors.workingStress.value, count: 1 }), at(4.8, 'kip'), { abs: at(0.05, 'kip'), rel: 0 })
  })
  it('an unmarked bar counts as the lowest grade, and no grade has a published bending yield', () => {
    expect(barGrades.unknown.yield.printed).toBe(40)
    expect(Object.values(barGrades).map((grade) => grade.dowelYield.standing)).toEqual(['assumed here', 'assumed here', 'assumed here'])
  })
})
