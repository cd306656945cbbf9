import { describe, expect, it } from 'vitest'
import { developmentGeneral, developmentTable, workedDevelopmentTable } from '../../../src/core/engineering/concrete/development.ts'
import { barGrades, bars } from '../../../src/core/engineering/tables/bars.ts'
import type { BarSize } from '../../../src/core/model/spec.ts'
import type { Pascals } from '../../../src/core/units/quantity.ts'
import { published, readCases, si } from '../cases.ts'

describe('straight development by the table and by the equation', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const bar = {
      diameter: bars[row.bar as BarSize].diameter.value,
      yield: barGrades['60'].yield.value,
      strength: si<Pascals>(row, 'fc_psi', 'psi'),
    }
    published(developmentTable({ ...bar, top: false, epoxy: 1, clear: true }), row, '=good_in', 'in')
    published(developmentTable({ ...bar, top: false, epoxy: 1, clear: false }), row, '=other_in', 'in')
    published(developmentGeneral({ ...bar, top: false, epoxy: 1, confinement: 2.5 }), row, '=general_in', 'in')
    const shown = workedDevelopmentTable({ ...bar, top: false, epoxy: 1, clear: true })
    expect([shown.standing, shown.formula.includes('25\\sqrt')]).toEqual(['from memory', true])
  })
})
