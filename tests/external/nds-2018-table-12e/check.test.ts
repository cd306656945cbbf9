import { describe, expect, it } from 'vitest'
import { species } from '../../../src/core/engineering/tables/species.ts'
import {
  bearingAcrossGrain,
  bearingAlongGrain,
  concreteBearing,
  tabulatedBearing,
} from '../../../src/core/engineering/wood/dowelBearing.ts'
import { yieldValue } from '../../../src/core/engineering/wood/yieldEquations.ts'
import type { SpeciesId } from '../../../src/core/model/spec.ts'
import type { Metres, Pascals } from '../../../src/core/units/quantity.ts'
import { at, digits, has, published, readCases, si } from '../cases.ts'

describe('wood on concrete, single shear', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const gravity = species[row.species as SpeciesId].gravity.value
    const diameter = si<Metres>(row, 'D_in', 'in')
    const value = (across: boolean): number => {
      const bearing = across ? bearingAcrossGrain({ gravity, diameter }) : bearingAlongGrain({ gravity })
      return (
        yieldValue({
          diameter,
          main: at(6, 'in'),
          side: si(row, 'ls_in', 'in'),
          mainBearing: concreteBearing.value,
          sideBearing: tabulatedBearing(bearing ?? (Number.NaN as Pascals)),
          bendingYield: at(45_000, 'psi'),
          angle: at(across ? 90 : 0, 'deg'),
          planes: 'single',
        })?.value ?? Number.NaN
      )
    }
    published(value(false), row, '=par_lb', 'lb')
    published(value(true), row, '=perp_lb', 'lb')
    const rounded = (newtons: number) => 10 * Math.floor(newtons / at<number>(10, 'lb') + 0.5 + 1e-9)
    if (has(row, '=sill_par_lb'))
      expect([rounded(value(false)), rounded(value(true))]).toEqual([digits(row, '=sill_par_lb'), digits(row, '=sill_perp_lb')])
  })
})
