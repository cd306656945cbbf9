import { describe, expect, it } from 'vitest'
import { elevationFactor, velocityCoefficient, velocityCoefficientTable } from '../../../src/core/engineering/loads/velocityPressure.ts'
import type { Metres } from '../../../src/core/units/quantity.ts'
import { at, published, readCases, si } from '../cases.ts'

describe('velocity pressure coefficient', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const height = si<Metres>(row, 'z_ft', 'ft')
    for (const exposure of ['B', 'C', 'D'] as const) {
      published(velocityCoefficientTable({ exposure, height }) ?? Number.NaN, row, `=${exposure}_table`)
      // Two cells of 7-22 sit on the half (0.65650, 0.98049) and are listed upward.
      for (const edition of ['7-16', '7-22'] as const)
        published(velocityCoefficient({ exposure, height, edition }), row, `=${exposure}_${edition}`, '1', 1.2e-5)
    }
  })
  it('stays at its 15 ft value below, and the table has nothing above 30 ft', () => {
    expect(velocityCoefficient({ exposure: 'C', height: at(3, 'ft'), edition: '7-16' })).toBe(
      velocityCoefficient({ exposure: 'C', height: at(15, 'ft'), edition: '7-16' }),
    )
    expect(velocityCoefficientTable({ exposure: 'C', height: at(3, 'ft') })).toBe(0.85)
    expect(velocityCoefficientTable({ exposure: 'C', height: at(31, 'ft') })).toBeNull()
  })
  it.each(readCases(import.meta.url, 'elevation.csv').map((row) => [row.id, row] as const))('elevation %s ft', (_, row) => {
    published(elevationFactor({ elevation: si(row, 'ft', 'ft') }), row, '=table')
    published(elevationFactor({ elevation: si(row, 'ft', 'ft') }), row, '=Ke')
  })
})
