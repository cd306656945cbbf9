import { describe, expect, it } from 'vitest'
import { breakoutClay, breakoutFactorClay } from '../../../src/core/engineering/soil/breakoutClay.ts'
import type { Metres, SquareMetres } from '../../../src/core/units/quantity.ts'
import { published, readCases, si } from '../cases.ts'

describe('breakout of a round pad in clay', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const width = si<Metres>(row, 'B_in', 'in')
    const depth = si<Metres>(row, 'Df_ft', 'ft')
    const fc = breakoutFactorClay({ depth, width, strip: false })
    published(depth / width, row, '=R')
    published(fc, row, '=Fc')
    published(
      breakoutClay({
        area: ((Math.PI * width ** 2) / 4) as SquareMetres,
        unitWeight: si(row, 'g_pcf', 'pcf'),
        depth,
        strength: si(row, 'cu_psf', 'psf'),
        fc,
      }),
      row,
      '=Qu_lb',
      'lb',
    )
  })
  it('has caps of 9 and 8', () => {
    expect(breakoutFactorClay({ depth: 20 as Metres, width: 1 as Metres, strip: false })).toBe(9)
    expect(breakoutFactorClay({ depth: 20 as Metres, width: 1 as Metres, strip: true })).toBe(8)
  })
})
