import { describe, expect, it } from 'vitest'
import { builtUpFactor, columnStability } from '../../../src/core/engineering/wood/columnStability.ts'
import { digits, published, readCases, si } from '../cases.ts'

describe('Example 5.7', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const found = columnStability({
      elasticityMin: si(row, 'Emin_psi', 'psi'),
      compression: si(row, 'Fc_psi', 'psi'),
      effectiveLength: si(row, 'le_ft', 'ft'),
      depth: si(row, 'd_in', 'in'),
      builtUp: digits(row, 'Kf'),
    })
    published(found?.slenderness ?? Number.NaN, row, '=le/d')
    published(found?.cp ?? Number.NaN, row, '=CP')
  })
  it('holds the nailed factor', () => expect(builtUpFactor.nailed.value).toBe(0.6))
})
