import { describe, expect, it } from 'vitest'
import { riseByFetter } from '../../../src/core/engineering/tables/capillaryRise.ts'
import { close } from '../../close.ts'
import { published, readCases, si } from '../cases.ts'

describe('capillary rise by grain size', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id ?? '', row] as const))('%s', (id, row) => {
    const found = riseByFetter[id]
    if (!found) throw new Error(`no row ${id}`)
    published(found.rise.value, row, '=rise_cm', 'cm')
    expect(found.doubted).toBe(row.doubted === 'yes')
    // The poster misprints the first radius tenfold (0.002 cm); with 0.0002 every row is the same tube law within its rounding.
    close(found.rise.value * si<number>(row, 'radius_cm', 'cm'), 0.149e-4, { abs: 0, rel: 0.08 })
  })
})
