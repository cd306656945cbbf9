import { describe, expect, it } from 'vitest'
import { concreteBond, concreteToWoodBond, workedConcreteBond } from '../../../src/core/engineering/wood/concreteBond.ts'
import type { Metres } from '../../../src/core/units/quantity.ts'
import { published, readCases, si } from '../cases.ts'

describe('bond of concrete to an encased post', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const inputs = {
      bond: concreteToWoodBond.value,
      perimeter: si<Metres>(row, 'perimeter_in', 'in'),
      length: si<Metres>(row, 'length_in', 'in'),
    }
    published(concreteBond(inputs), row, '=B_lb', 'lb')
    expect(workedConcreteBond(inputs).standing).toBe('secondary')
  })
})
