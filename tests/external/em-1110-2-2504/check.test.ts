import { describe, expect, it } from 'vitest'
import { type DensityState, compactedFrictionAngles, consistencies, granularStates } from '../soilProperties.ts'
import { materialWeights } from '../../../src/core/engineering/tables/materials.ts'
import { presumptiveSoils } from '../../../src/core/engineering/tables/soils.ts'
import { has, published, readCases } from '../cases.ts'

describe('granular soil by density', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id as DensityState, row] as const))('%s', (id, row) => {
    const { blows, frictionAngle, moist, submerged } = granularStates[id]
    const ends = [
      ['=N_low', blows.low, '1'],
      ['=N_high', blows.high, '1'],
      ['=phi_low_deg', frictionAngle.low, 'deg'],
      ['=phi_high_deg', frictionAngle.high, 'deg'],
      ['=moist_low_pcf', moist.low, 'pcf'],
      ['=moist_high_pcf', moist.high, 'pcf'],
      ['=sub_low_pcf', submerged.low, 'pcf'],
      ['=sub_high_pcf', submerged.high, 'pcf'],
    ] as const
    for (const [column, end, unit] of ends) {
      expect(end !== null).toBe(has(row, column))
      if (end) published(end.value, row, column, unit)
    }
  })
  it('our own estimates stay inside it', () => {
    const granular = materialWeights.granular.unitWeight.value
    expect(granular).toBeGreaterThanOrEqual(granularStates.medium.moist.low?.value ?? Number.NaN)
    expect(presumptiveSoils.sand.estimate.frictionAngle?.value).toBe(granularStates.loose.frictionAngle.high?.value)
    expect(presumptiveSoils.gravel.estimate.frictionAngle?.value).toBe(granularStates.medium.frictionAngle.high?.value)
    expect(presumptiveSoils.clay.estimate.frictionAngle?.value).toBe(compactedFrictionAngles.CH.value)
    expect(consistencies.medium.low?.value).toBe(consistencies.soft.high?.value)
  })
})
