import { describe, it } from 'vitest'
import { breakoutClayRectangle, criticalRatioClay } from '../../../src/core/engineering/soil/breakoutClay.ts'
import type { Metres, Pascals } from '../../../src/core/units/quantity.ts'
import { published, readCases, si } from '../cases.ts'

describe('breakout of a rectangle in clay', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const plate = { width: si<Metres>(row, 'B_m'), length: si<Metres>(row, 'L_m'), strength: si<Pascals>(row, 'cu_kPa', 'kPa') }
    const depth = si<Metres>(row, 'Df_m')
    published(0.107 * si(row, 'cu_kPa') + 2.5, row, '=Rcr_uncapped')
    const { square, rectangle } = criticalRatioClay(plate)
    published(square, row, '=Rcr')
    published(rectangle, row, '=Rcr_rect')
    published(depth / plate.width / rectangle, row, '=ratio')
    published(
      breakoutClayRectangle({ ...plate, depth, unitWeight: si(row, 'g_kN/m3', 'kN/m3'), chartFactor: si(row, 'chart') }),
      row,
      '=Qu_kN',
      'kN',
    )
  })
})
