import { describe, expect, it } from 'vitest'
import {
  type ResidentialElement,
  backfillMinimum,
  freezeThawStrength,
  residentialStrength,
  structuralMinimum,
} from '../../../src/core/engineering/tables/concrete.ts'
import { published, readCases } from '../cases.ts'

describe('strength by weathering', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id as ResidentialElement, row] as const))('%s', (id, row) => {
    for (const weathering of ['negligible', 'moderate', 'severe'] as const)
      published(residentialStrength[id][weathering].strength.value, row, `=${weathering}_psi`, 'psi')
    expect(residentialStrength[id].moderate.airEntrained).toBe(id.startsWith('exposed'))
  })
  it('other floors on strength', () => {
    expect([structuralMinimum.printed, backfillMinimum.printed]).toEqual([2500, 2000])
    expect(Object.values(freezeThawStrength).map((row) => row.strength.printed)).toEqual([2500, 3500, 4500, 5000])
  })
})
