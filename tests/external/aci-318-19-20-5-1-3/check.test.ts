import { describe, expect, it } from 'vitest'
import { leastBarOutside, longestBar, workedLongestBar } from '../../../src/core/engineering/detail/barFit.ts'
import { cover } from '../../../src/core/engineering/tables/concrete.ts'
import { barBearingLength } from '../../../src/core/engineering/wood/barDowel.ts'
import type { Metres } from '../../../src/core/units/quantity.ts'
import { at, published, readCases, si } from '../cases.ts'

describe('cover and the bar that fits', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s in hole', (_, row) => {
    const diameter = si<Metres>(row, 'D_in', 'in')
    const bar = longestBar({ diameter, cover: cover.castAgainstEarth.value })
    published(bar ?? Number.NaN, row, '=bar_in', 'in')
    published(
      barBearingLength({
        pierDiameter: diameter,
        postWidth: at(5.5, 'in'),
        cover: cover.castAgainstEarth.value,
        barLength: bar as Metres,
      }) ?? Number.NaN,
      row,
      '=outside_in',
      'in',
    )
    expect(workedLongestBar({ diameter, cover: cover.castAgainstEarth.value })?.value).toBe(bar)
  })
  it('the figures of the table, and no bar where cover takes all', () => {
    expect([cover.castAgainstEarth.printed, cover.formedSmall.printed, cover.formedLarge.printed, leastBarOutside.printed]).toEqual([
      3, 1.5, 2, 2,
    ])
    expect(longestBar({ diameter: at(6, 'in'), cover: at(3, 'in') })).toBeNull()
  })
})
