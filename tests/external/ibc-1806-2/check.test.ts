import { describe, expect, it } from 'vitest'
import type { PresumptiveClass } from '../../../src/core/model/spec.ts'
import { lateralPressure } from '../../../src/core/engineering/soil/lateralPressure.ts'
import { slidingResistance } from '../../../src/core/engineering/soil/slidingResistance.ts'
import { presumptiveSoils } from '../../../src/core/engineering/tables/soils.ts'
import type { Newtons, Pascals, SquareMetres } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, published, readCases, si } from '../cases.ts'

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

describe('sliding', () => {
  const base = { area: (Math.PI * at<number>(1, 'ft') ** 2) as SquareMetres, deadLoad: at<Newtons>(2733, 'lb') }
  it('W1.2: cohesion of a 24 in pier, 408.4 lb, below half the dead load of 1,366.6 lb', () => {
    close(
      slidingResistance({ ...base, friction: null, cohesion: presumptiveSoils.clay.cohesion?.value ?? null }) ?? Number.NaN,
      at(408.4, 'lb'),
      { abs: at(0.05, 'lb'), rel: 0 },
    )
    close(slidingResistance({ ...base, friction: null, cohesion: at<Pascals>(10_000, 'psf') }) ?? Number.NaN, at(1366.5, 'lb'), {
      abs: at(0.2, 'lb'),
      rel: 0,
    })
  })
  it('friction multiplies dead load, and nothing is guessed', () => {
    close(slidingResistance({ ...base, friction: 0.25, cohesion: null }) ?? Number.NaN, at(2733 / 4, 'lb'), { abs: 0, rel: 1e-12 })
    expect(slidingResistance({ ...base, friction: null, cohesion: null })).toBeNull()
  })
})
