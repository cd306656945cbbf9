import { describe, expect, it } from 'vitest'
import { swell, swellRange, swellRangeUnknown } from '../../../src/core/engineering/tables/swell.ts'
import { close } from '../../close.ts'
import { at, published, readCases, si } from '../cases.ts'

describe('swell from densities', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const found = si(row, 'bank_lb') / si(row, 'loose_lb')
    published(found, row, '=swell')
    published(100 * (found - 1), row, '=swell_percent')
  })
})

describe('W7.4: spoil of a 24 in x 6 ft hole', () => {
  const bank = Math.PI * at<number>(12, 'in') ** 2 * at<number>(6, 'ft')
  it('is 18.85 ft3, 0.698 yd3 in the ground', () => {
    close(bank, at(18.85, 'ft3'), { abs: at(0.005, 'ft3'), rel: 0 })
    close(bank, at(0.698, 'yd3'), { abs: at(0.0005, 'yd3'), rel: 0 })
  })
  it.each(readCases(import.meta.url, 'loose.csv').map((row) => [row.id, row] as const))('%s', (_, row) => {
    const found = swell[row.soil as keyof typeof swell]
    published(found.loose.value, row, '=factor')
    published(found.compacted.value, row, '=compacted')
    published(bank * found.loose.value, row, '=loose_yd3', 'yd3')
    expect(found.loose.standing).toBe('from memory')
  })
  it('ranges are ordered and hold every earth row', () => {
    for (const { low, high } of [...Object.values(swellRange), swellRangeUnknown]) expect(low.value).toBeLessThanOrEqual(high.value)
    expect([swellRangeUnknown.low.value, swellRangeUnknown.high.value]).toEqual([swell.sand.loose.value, swell.clay.loose.value])
  })
})
