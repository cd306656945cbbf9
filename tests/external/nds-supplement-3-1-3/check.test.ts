import { describe, it } from 'vitest'
import { woodUnitWeight } from '../../../src/core/engineering/wood/woodUnitWeight.ts'
import { digits, published, readCases, si } from '../cases.ts'

describe('unit weight of wood', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    published(woodUnitWeight({ gravity: digits(row, 'G'), moisture: si(row, 'mc_percent', '%') }), row, '=pcf', 'pcf')
  })
})
