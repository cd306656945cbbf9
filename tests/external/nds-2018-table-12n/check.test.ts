import { describe, expect, it } from 'vitest'
import { assignedGravity } from '../../../src/core/engineering/tables/species.ts'
import { bearingUnderNail } from '../../../src/core/engineering/wood/dowelBearing.ts'
import { yieldValue } from '../../../src/core/engineering/wood/yieldEquations.ts'
import type { Metres, Pascals, Radians } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, has, published, readCases, si } from '../cases.ts'

describe('a nail in single shear', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const byFormula = bearingUnderNail({ gravity: assignedGravity['douglas-fir-larch'].value })
    close(byFormula ?? Number.NaN, at(4637, 'psi'), { abs: at(0.5, 'psi'), rel: 0 })
    const bearing = has(row, 'Fe_psi') ? si<Pascals>(row, 'Fe_psi', 'psi') : (byFormula as Pascals)
    const found = yieldValue({
      diameter: si(row, 'D_in', 'in'),
      main: (si(row, 'L_in', 'in') - si(row, 'ls_in', 'in')) as Metres,
      side: si(row, 'ls_in', 'in'),
      mainBearing: bearing,
      sideBearing: bearing,
      bendingYield: si(row, 'Fyb_psi', 'psi'),
      angle: 0 as Radians,
      planes: 'single',
    })
    expect(found?.terms.reduction.IV).toBeCloseTo(2.2, 12)
    published(found?.value ?? Number.NaN, row, '=Z_lb', 'lb')
  })
})
