import { describe, expect, it } from 'vitest'
import { fallAway, groundFall, leastFall, workedGroundFall } from '../../../src/core/engineering/moisture/fallAway.ts'
import { lotDrainage, sidingClearance } from '../../../src/core/engineering/tables/lotDrainage.ts'
import { close } from '../../close.ts'
import { at, published, readCases, si } from '../cases.ts'

describe('fall of the ground', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const fall = groundFall({ drop: si(row, 'drop_in', 'in'), run: si(row, 'run_ft', 'ft') })
    published(fall, row, '=percent', '%')
    expect(fallAway(fall).reached).toBe(row.reached === 'yes')
  })
  it('[trap 10] 6 in within 10 ft is 5 percent, not 6', () => {
    close(leastFall, 0.05, { abs: 1e-15, rel: 0 })
    expect(fallAway(groundFall({ drop: at(6, 'in'), run: at(10, 'ft') })).short).toBe(0)
    close(fallAway(0.02 as never).short, 0.03, { abs: 1e-12, rel: 0 })
    expect(workedGroundFall({ drop: at(6, 'in'), run: at(10, 'ft') }).sources).toEqual(['irc-r401-3'])
  })
  it('holds the printed figures beside it', () => {
    expect([lotDrainage.swaleFall.printed, lotDrainage.pavedFall.printed]).toEqual([2, 2])
    expect([sidingClearance.ground.printed, sidingClearance.slab.printed]).toEqual([6, 2])
  })
})
