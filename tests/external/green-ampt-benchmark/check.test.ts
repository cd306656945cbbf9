import { describe, it } from 'vitest'
import { infiltrated } from '../../../src/core/engineering/moisture/greenAmpt.ts'
import { published, readCases, si } from '../cases.ts'

describe('the same equation solved by another program', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const soil = {
      conductivity: si<never>(row, 'K_cm/h', 'cm/h'),
      suction: si<never>(row, 'suction_cm', 'cm'),
      deficit: si(row, 'deficit'),
    }
    // Its solver stops at 1e-10 cm.
    published(infiltrated({ ...soil, time: si(row, 't_h', 'h') }), row, '=F_cm', 'cm', 1e-9)
  })
})
