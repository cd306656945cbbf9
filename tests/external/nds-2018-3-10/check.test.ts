import { describe, expect, it } from 'vitest'
import { endBearing, workedEndBearing } from '../../../src/core/engineering/wood/endBearing.ts'
import type { Pascals, SquareMetres } from '../../../src/core/units/quantity.ts'
import { published, readCases, si } from '../cases.ts'

describe('the end of a post along its grain, no plate under it', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const inputs = {
      compression: si<Pascals>(row, 'fc_psi', 'psi'),
      wet: si(row, 'cm'),
      duration: si(row, 'cd'),
      area: si<SquareMetres>(row, 'area_in2', 'in2'),
    }
    published(endBearing(inputs), row, '=lb', 'lb')
    expect(workedEndBearing(inputs).standing).toBe('from memory')
  })
})
