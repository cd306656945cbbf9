import { describe, expect, it } from 'vitest'
import { distanceToDaylight } from '../../../src/core/engineering/soil/depths.ts'
import { setbackFromSlope, setbackSlope } from '../../../src/core/engineering/soil/setback.ts'
import type { Metres, Slope } from '../../../src/core/units/quantity.ts'
import { has, published, readCases, si } from '../cases.ts'

describe('setback from a descending slope', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const setback = setbackFromSlope({ slopeHeight: si(row, 'H_ft', 'ft') })
    published(setback, row, '=setback_ft', 'ft')
    if (!has(row, 'slope_run_per_rise')) return
    const slope = (1 / si(row, 'slope_run_per_rise')) as Slope
    published(setback * slope, row, '=shallow_ft', 'ft')
    if (has(row, 'depth_ft'))
      published(distanceToDaylight({ depth: si(row, 'depth_ft', 'ft'), slope }) ?? Number.NaN, row, '=daylight_ft', 'ft')
  })
  it('speaks of slopes steeper than one in three, and level ground never daylights', () => {
    expect(setbackSlope.value).toBeCloseTo(1 / 3, 12)
    expect(distanceToDaylight({ depth: 1 as Metres, slope: 0 as Slope })).toBeNull()
  })
})
