import { describe, expect, it } from 'vitest'
import { depthAtDownhillEdge, depthAtUphillEdge, leastFootingDepth } from '../../../src/core/engineering/soil/depths.ts'
import type { Metres, Slope } from '../../../src/core/units/quantity.ts'
import { at, published, readCases, si } from '../cases.ts'

describe('depth at the edges of a pier on a slope', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const inputs = {
      depthAtAxis: si<Metres>(row, 'dc_ft', 'ft'),
      radius: si<Metres>(row, 'r_ft', 'ft'),
      slope: (1 / si(row, 'slope_run_per_rise')) as Slope,
    }
    published(depthAtDownhillEdge(inputs), row, '=downhill_ft', 'ft')
    published(depthAtUphillEdge(inputs), row, '=uphill_ft', 'ft')
    published(depthAtDownhillEdge(inputs), row, '=downhill_in', 'in')
  })
  it('W8.2: 42 in of frost is met at 3:1 and just met at 2:1', () => {
    const frost = at<number>(42, 'in')
    const edge = (run: number) => depthAtDownhillEdge({ depthAtAxis: at(48, 'in'), radius: at(12, 'in'), slope: (1 / run) as Slope })
    expect(edge(3)).toBeGreaterThan(frost)
    expect(edge(2) + 1e-12).toBeGreaterThanOrEqual(frost)
    expect(edge(1.9)).toBeLessThan(frost)
  })
  it('a footing goes 12 in down at least', () => {
    expect(leastFootingDepth.value).toBeCloseTo(0.3048, 12)
  })
})

describe('measures of a slope', () => {
  it.each(readCases(import.meta.url, 'slopes.csv').map((row) => [row.id, row] as const))('%s %', (_, row) => {
    const slope = si(row, 'percent', '%')
    published(Math.atan(slope), row, '=deg', 'deg')
    published(1 / slope, row, '=run')
  })
})
