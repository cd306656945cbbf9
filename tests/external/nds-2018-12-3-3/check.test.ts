import { describe, expect, it } from 'vitest'
import {
  bearingAcrossGrain,
  bearingAlongGrain,
  bearingUnderNail,
  tabulatedBearing,
  workedBearingAlongGrain,
} from '../../../src/core/engineering/wood/dowelBearing.ts'
import { type SpeciesGroup, assignedGravity, species } from '../../../src/core/engineering/tables/species.ts'
import { at, digits, has, published, readCases } from '../cases.ts'

const tabulated = (strength: ReturnType<typeof bearingAlongGrain>): number => (strength === null ? Number.NaN : tabulatedBearing(strength))

describe('dowel bearing strength of wood', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id as SpeciesGroup, row] as const))('%s', (id, row) => {
    const gravity = assignedGravity[id].value
    expect(gravity).toBe(digits(row, 'G'))
    if (has(row, '=par_psi')) published(tabulated(bearingAlongGrain({ gravity })), row, '=par_psi', 'psi')
    for (const inches of ['0.25', '0.375', '0.5', '0.625', '0.75', '1']) {
      published(tabulated(bearingAcrossGrain({ gravity, diameter: at(Number(inches), 'in') })), row, `=perp-${inches}_psi`, 'psi')
    }
  })
  it('the posts use the same gravities', () => {
    for (const id of ['southern-pine', 'douglas-fir-larch', 'hem-fir', 'spruce-pine-fir'] as const)
      expect(species[id].gravity.value).toBe(assignedGravity[id].value)
    expect(species.cedar.gravity.value).toBe(assignedGravity['western-cedars'].value)
  })
  it('gives nothing for a dowel over 1 in or under 1/4 in across the grain, or for a gravity off the scale', () => {
    expect(bearingAcrossGrain({ gravity: 0.5, diameter: at(1.01, 'in') })).toBeNull()
    expect(bearingAcrossGrain({ gravity: 0.5, diameter: at(0.24, 'in') })).toBeNull()
    expect([bearingAlongGrain({ gravity: 0.3 }), bearingUnderNail({ gravity: 0.8 }), workedBearingAlongGrain({ gravity: 0.3 })]).toEqual([
      null,
      null,
      null,
    ])
  })
})
