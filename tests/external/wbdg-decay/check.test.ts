import { describe, expect, it } from 'vitest'
import { decayHazard } from '../../../src/core/engineering/life/climateIndex.ts'
import { publishedIndices } from '../../../src/core/engineering/tables/climateRecords.ts'
import { digits, readCases } from '../cases.ts'

describe('class of hazard', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    expect(decayHazard({ place: 'above-ground', index: digits(row, 'index') })).toBe(row.class)
  })
  it('[trap 6] wood in the ground is at high hazard whatever the index', () => {
    for (const index of [0, 10, 35, 200]) expect(decayHazard({ place: 'in-ground', index })).toBe('high')
  })
  it('puts the four cities where their values fall', () => {
    const found = publishedIndices.map(({ id, index }) => [id, decayHazard({ place: 'above-ground', index })])
    expect(found).toEqual([
      ['vitoria', 'high'],
      ['palencia', 'high'],
      ['madrid', 'moderate'],
      ['cordoba', 'moderate'],
    ])
  })
})
