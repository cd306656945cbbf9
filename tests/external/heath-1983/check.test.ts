import { describe, expect, it } from 'vitest'
import { capillaryRise, riseByHeath } from '../../../src/core/engineering/tables/capillaryRise.ts'
import { published, readCases } from '../cases.ts'

describe('capillary rise', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id as keyof typeof riseByHeath, row] as const))('%s', (id, row) => {
    published(riseByHeath[id].value, row, '=rise_cm', 'cm')
  })
  it('the ranges shown for a class are rows of the two tables, marked as our pairing', () => {
    expect(capillaryRise.sand.low?.printed).toBe(riseByHeath['coarse-sand'].printed)
    expect(capillaryRise.clay.low?.printed).toBe(riseByHeath.silt.printed)
    expect(capillaryRise.clay.high).toBeNull()
    expect(capillaryRise.sand.high?.standing).toBe('assumed here')
    expect(capillaryRise['foliated-rock']).toEqual({ low: null, high: null })
  })
})
