import { describe, expect, it } from 'vitest'
import { hydrationWater, waterCement, workedHydrationWater, workedWaterCement } from '../../../src/core/engineering/mix/hydrationWater.ts'
import { hydrationWaterShares } from '../../../src/core/engineering/tables/hydration.ts'
import { waterUnitWeight } from '../../../src/core/engineering/tables/materials.ts'
import type { Newtons } from '../../../src/core/units/quantity.ts'
import { at, published, readCases, si } from '../cases.ts'

const cement = at<Newtons>(12.53, 'lb')
const water = waterUnitWeight.value

describe('water that cement needs', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const volume = hydrationWater({ cement, share: si(row, 'share'), water })
    published(volume * water, row, '=lb', 'lb')
    published(volume, row, '=qt', 'qt')
  })
  it('the shares are those of the table', () => {
    expect(Object.values(hydrationWaterShares).map(({ printed }) => printed)).toEqual([0.23, 0.42, 0.44])
    expect(workedHydrationWater({ cement, share: 0.42, water }).standing).toBe('secondary')
  })
})

describe('water that the label asks for', () => {
  it.each(readCases(import.meta.url, 'mixing.csv').map((row) => [row.id, row] as const))('%s', (_, row) => {
    const volume = si<never>(row, 'qt', 'qt')
    published(volume * water, row, '=lb', 'lb')
    published(waterCement({ volume, cement, water }), row, '=ratio')
    expect(workedWaterCement({ volume, cement, water }).quantity).toBe('ratio')
  })
})
