import { describe, expect, it } from 'vitest'
import { groupShrinkage, type ShrinkageRow, shrinkage, speciesOfGroup } from '../../../src/core/engineering/tables/shrinkage.ts'
import type { SpeciesId } from '../../../src/core/model/spec.ts'
import { published, readCases } from '../cases.ts'

describe('shrinkage of species', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id as ShrinkageRow, row] as const))('%s', (id, row) => {
    for (const direction of ['radial', 'tangential', 'volumetric'] as const) {
      published(shrinkage[id][direction].value, row, `=${direction}`, '%')
      expect(shrinkage[id][direction].standing).toBe(row.standing)
    }
    expect(shrinkage[id].tangential.value).toBeGreaterThan(shrinkage[id].radial.value)
  })
  it.each<readonly [SpeciesId, number, number]>([
    ['southern-pine', 7.4, 7.7],
    ['douglas-fir-larch', 6.9, 7.6],
    ['hem-fir', 7, 9.2],
    ['spruce-pine-fir', 6.7, 7.8],
    ['cedar', 4.9, 5],
  ])('%s shrinks by %s to %s percent along the rings', (group, low, high) => {
    const found = groupShrinkage(group, 'tangential')
    expect([found.low.printed, found.high.printed]).toEqual([low, high])
    expect(speciesOfGroup[group].length).toBeGreaterThan(1)
  })
})
