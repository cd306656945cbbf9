import { describe, expect, it } from 'vitest'
import { presumptiveFriction, workedPresumptiveFriction } from '../../../src/core/engineering/soil/presumptiveFriction.ts'
import { sideFriction } from '../../../src/core/engineering/soil/sideFriction.ts'
import { presumptiveSoils } from '../../../src/core/engineering/tables/soils.ts'
import type { PresumptiveClass } from '../../../src/core/model/spec.ts'
import type { Metres, Pascals } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, published, readCases } from '../cases.ts'

const unit = (id: PresumptiveClass) =>
  presumptiveFriction({ bearing: presumptiveSoils[id].bearing.value, diameter: at(24, 'in') }) ?? Number.NaN

describe('presumptive shaft resistance', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    published(unit(row.class as PresumptiveClass), row, '=fs_psf', 'psf')
    // The metric column is the cap's own conversion, 23.94 kPa.
    published(unit(row.class as PresumptiveClass), row, '=fs_kPa', 'kPa')
  })
  it.each([
    ['clay', 4.5, 7069],
    ['sand', 4.5, 9425],
    ['sand', 6, 12_566],
  ] as const)('W3.1, W4.2: 24 in shaft in %s over %s ft: %s lb in compression', (id, feet, pounds) => {
    const shaft = sideFriction({
      shear: unit(id) as Pascals,
      perimeter: (Math.PI * at<number>(24, 'in')) as Metres,
      length: at(feet, 'ft'),
    })
    close(shaft, at(pounds, 'lb'), { abs: at(0.5, 'lb'), rel: 0 })
  })
  it('is absent under 12 in and never better than its source', () => {
    const bearing = presumptiveSoils.sand.bearing.value
    expect(presumptiveFriction({ bearing, diameter: at(11.9, 'in') })).toBeNull()
    expect(presumptiveFriction({ bearing, diameter: at(12, 'in') })).not.toBeNull()
    expect(workedPresumptiveFriction({ bearing, diameter: at(12, 'in') })?.standing).toBe('secondary')
  })
})
