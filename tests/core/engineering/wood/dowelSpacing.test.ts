import { describe, expect, it } from 'vitest'
import { at } from '../../../external/cases.ts'
import {
  dowelDistances,
  geometryFactor,
  greatestAcrossGrain,
  leastEdgeDistance,
  workedGeometryFactor,
} from '../../../../src/core/engineering/wood/dowelSpacing.ts'
import { close } from '../../../close.ts'

describe('distances of a dowel', () => {
  const { full, floor } = dowelDistances.endInTension
  const factor = (inches: number) =>
    geometryFactor({ actual: at(inches, 'in'), diameter: at(0.5, 'in'), full: full.value, floor: floor.value })

  it.each([
    [1.7, null],
    [1.75, 0.5],
    [2.625, 0.75],
    [3.5, 1],
    [9, 1],
  ] as const)('%s in at the end of a 1/2 in dowel: %s', (inches, want) => {
    const found = factor(inches)
    if (want === null) expect(found).toBeNull()
    else close(found ?? Number.NaN, want, { abs: 1e-12, rel: 0 })
  })
  it('spacing of 3 diameters takes a quarter off', () => {
    const row = dowelDistances.spacingInRow
    close(
      workedGeometryFactor({ actual: at(1.5, 'in'), diameter: at(0.5, 'in'), full: row.full.value, floor: row.floor.value })?.value ??
        Number.NaN,
      0.75,
      { abs: 1e-12, rel: 0 },
    )
  })
  it('edge: 1.5 diameters for a stout dowel, half the row spacing for a slender one', () => {
    const edge = (bearing: number, rows: number | null) =>
      leastEdgeDistance({ diameter: at(0.5, 'in'), bearingLength: at(bearing, 'in'), rowSpacing: rows === null ? null : at(rows, 'in') })
    close(edge(2.9, 3), at(0.75, 'in'), { abs: 1e-12, rel: 0 })
    close(edge(3.5, 3), at(1.5, 'in'), { abs: 1e-12, rel: 0 })
    close(edge(3.5, null), at(0.75, 'in'), { abs: 1e-12, rel: 0 })
  })
  it('holds the printed figures', () => {
    expect([
      full.printed,
      floor.printed,
      greatestAcrossGrain.printed,
      dowelDistances.endInTensionHardwood.full.printed,
      dowelDistances.endAway.floor.printed,
    ]).toEqual([7, 3.5, 5, 5, 2])
  })
})
