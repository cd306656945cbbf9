import { describe, expect, it } from 'vitest'
import { cementInBag, workedCementInBag } from '../../../src/core/engineering/mix/cementInBag.ts'
import { bags } from '../../../src/core/engineering/tables/bags.ts'
import { cementPerVolume } from '../../../src/core/engineering/tables/hydration.ts'
import { close } from '../../close.ts'
import { at, published, readCases, si } from '../cases.ts'

describe('cement in a bag', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id as keyof typeof cementPerVolume, row] as const))('%s', (id, row) => {
    const perVolume = cementPerVolume[id].value
    published(perVolume, row, '=lb/yd3', 'lb/yd3')
    close(perVolume, at<number>(94 * si(row, 'sacks'), 'lb') / at<number>(1, 'yd3'), { abs: 0, rel: 1e-9 })
    const cement = cementInBag({ perVolume, yield: bags[80].yield.value })
    published(cement, row, '=bag_lb', 'lb')
    published(cement / bags[80].weight.value, row, '=percent', '%')
    expect(workedCementInBag({ perVolume, yield: bags[80].yield.value }).standing).toBe('secondary')
  })
})
