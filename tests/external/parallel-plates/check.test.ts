import { describe, expect, it } from 'vitest'
import { capillaryHold, conductivityRatio, jointConductivity } from '../../../src/core/engineering/moisture/jointConductivity.ts'
import { concreteConductivity } from '../../../src/core/engineering/tables/conductivity.ts'
import { waterUnitWeight } from '../../../src/core/engineering/tables/materials.ts'
import type { Metres } from '../../../src/core/units/quantity.ts'
import { at, published, readCases, si } from '../cases.ts'

describe('an open joint', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const gap = si<Metres>(row, 'b_mm', 'mm')
    published(jointConductivity({ gap }), row, '=K_m/s', 'm/s')
    published(capillaryHold({ gap, water: waterUnitWeight.value }) ?? Number.NaN, row, '=hold_mm', 'mm')
  })
  it('of a quarter millimetre carries over ten thousand million times more than sound concrete', () => {
    const joint = jointConductivity({ gap: at(0.25, 'mm') })
    expect(conductivityRatio({ joint, other: concreteConductivity.high.value })).toBeGreaterThan(1e10)
    expect(conductivityRatio({ joint, other: concreteConductivity.low.value })).toBeGreaterThan(1e12)
  })
})
