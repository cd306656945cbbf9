import { describe, expect, it } from 'vitest'
import { airForExposure } from '../../../src/core/engineering/mix/airForExposure.ts'
import { type AggregateSize, airRange } from '../../../src/core/engineering/tables/airContent.ts'
import { published, readCases } from '../cases.ts'

describe('air in concrete that freezes wet', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id as AggregateSize, row] as const))('%s in aggregate', (aggregate, row) => {
    const [low, high] = airRange[aggregate]
    published(low.value, row, '=low', '%')
    published(high.value, row, '=high', '%')
    for (const exposure of ['F1', 'F2', 'F3'] as const) {
      const found = airForExposure({ exposure, aggregate })
      if (!found) throw new Error('no target')
      published(found.target, row, exposure === 'F1' ? '=F1' : '=F2', '%')
      expect(found.target).toBeGreaterThanOrEqual(low.value)
      expect(found.target).toBeLessThanOrEqual(high.value)
      expect(found.high - found.low).toBeCloseTo(0.03, 12)
    }
    expect(airForExposure({ exposure: 'F0', aggregate })).toBeNull()
  })
})
