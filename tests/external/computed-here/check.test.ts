import { describe, expect, it } from 'vitest'
import { slopePassiveRatio } from '../../../src/core/engineering/soil/slopePassive.ts'
import { at, published, readCases, si } from '../cases.ts'

describe('passive pressure on the downhill side', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    published(slopePassiveRatio({ frictionAngle: at(30, 'deg'), descent: si(row, 'slope_deg', 'deg') }) ?? Number.NaN, row, '=ratio')
  })
  it('has no value on a slope steeper than the friction angle', () => {
    expect(slopePassiveRatio({ frictionAngle: at(30, 'deg'), descent: at(31, 'deg') })).toBeNull()
  })
})
