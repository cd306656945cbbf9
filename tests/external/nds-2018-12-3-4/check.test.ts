import { describe, it } from 'vitest'
import { bearingAtAngle } from '../../../src/core/engineering/wood/dowelBearing.ts'
import { published, readCases, si } from '../cases.ts'

describe('bearing at an angle to the grain', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    published(
      bearingAtAngle({ along: si(row, 'par_psi', 'psi'), across: si(row, 'perp_psi', 'psi'), angle: si(row, 'angle_deg', 'deg') }),
      row,
      '=Fe_psi',
      'psi',
    )
  })
})
