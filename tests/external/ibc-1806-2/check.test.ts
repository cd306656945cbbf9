import { describe, expect, it } from 'vitest'
import type { PresumptiveClass } from '../../../src/core/model/spec.ts'
import { lateralPressure } from '../../../src/core/engineering/soil/lateralPressure.ts'
import { presumptiveSoils } from '../../../src/core/engineering/tables/soils.ts'
import { published, readCases, si } from '../cases.ts'

describe('presumptive soil values', () => {
  it.each(readCases(import.meta.url).map((row) => [row.class as PresumptiveClass, row] as const))('%s', (id, row) => {
    const soil = presumptiveSoils[id]
    published(soil.bearing.value, row, '=bearing_psf', 'psf')
    published(soil.bearing.value, row, '=bearing_kPa', 'kPa')
    published(soil.lateral.value, row, '=lateral_psf/ft', 'psf/ft')
    // 1,200 psf/ft is 188.506 kPa/m; the printed 188 is cut short by 0.006 more than half a unit.
    published(soil.lateral.value, row, '=lateral_kPa/m', 'kPa/m', 0.007)
    if (soil.friction) published(soil.friction.value, row, '=friction')
    if (soil.cohesion) {
      published(soil.cohesion.value, row, '=cohesion_psf', 'psf')
      published(soil.cohesion.value, row, '=cohesion_kPa', 'kPa')
    }
    expect([soil.friction, soil.cohesion].filter((one) => one !== null)).toHaveLength(1)
    expect([soil.bearing, soil.lateral].map((one) => one.standing)).toEqual(['secondary', 'secondary'])
  })
})

describe('lateral pressure at a depth', () => {
  it.each(readCases(import.meta.url, 'pressure.csv').map((row) => [row.id, row] as const))('%s', (_, row) => {
    published(
      lateralPressure({ gradient: si(row, 'Lt_psf/ft', 'psf/ft'), multiplier: si(row, 'k'), depth: si(row, 'z_ft', 'ft') }),
      row,
      '=p_psf',
      'psf',
    )
  })
})
