import { describe, expect, it } from 'vitest'
import { bagCount } from '../../../src/core/engineering/concrete/bagCount.ts'
import { longestBar } from '../../../src/core/engineering/detail/barFit.ts'
import { bags, dryMixPerVolume } from '../../../src/core/engineering/tables/bags.ts'
import { cover } from '../../../src/core/engineering/tables/concrete.ts'
import type { CubicMetres, Metres } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, published, readCases, si } from '../cases.ts'

const post = at<number>(5.5, 'in')

describe('what a bag makes', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s lb', (id, row) => {
    const bag = bags[Number(id) as keyof typeof bags]
    published(bag.yield.value, row, '=ft3', 'ft3')
    published(at<number>(1, 'yd3') / bag.yield.value, row, '=per-yard')
    expect(bag.perYard).toBe(Number(row['=per-yard']))
    close(bag.weight.value / bag.yield.value, dryMixPerVolume.value, { abs: at(0.05, 'pcf'), rel: 0 })
  })
  it('an 80 lb bag with 3 qt of water weighs 143.8 pcf mixed', () => {
    const water = 3 * 2.0863
    close(at<number>(80 + water, 'lb') / bags[80].yield.value, at(143.8, 'pcf'), { abs: at(0.05, 'pcf'), rel: 0 })
  })
})

describe('bags for a hole', () => {
  it.each(readCases(import.meta.url, 'holes.csv').map((row) => [row.id, row] as const))('%s', (_, row) => {
    const hole = (Math.PI / 4) * si(row, 'D_in', 'in') ** 2 * si(row, 'L_in', 'in')
    const volume = (hole - post ** 2 * si(row, 'post_in', 'in')) as CubicMetres
    published(volume, row, '=ft3', 'ft3')
    published(volume / bags[80].yield.value, row, '=bags_exact')
    published(bagCount({ volume, yield: bags[80].yield.value }), row, '=bags')
  })
  it('a whole number of bags asks for no more, and waste does', () => {
    const count = (bagfuls: number) => bagCount({ volume: (bagfuls * bags[80].yield.value) as CubicMetres, yield: bags[80].yield.value })
    expect([3, 3 * 1.05, 0].map(count)).toEqual([3, 4, 0])
  })
})

describe('augers', () => {
  it.each(readCases(import.meta.url, 'augers.csv').map((row) => [row.id, row] as const))('%s in', (_, row) => {
    const diameter = si<Metres>(row, 'D_in', 'in')
    const area = (Math.PI / 4) * diameter ** 2
    const four = at<number>(4, 'ft')
    published(area, row, '=ft2', 'ft2')
    published(area * four, row, '=yd3', 'yd3')
    const net = (area - post ** 2) * four
    published(net, row, '=yd3-post', 'yd3')
    published(net / four / (bags[80].yield.value / at<number>(1, 'ft')), row, '=bags-per-ft')
    published((diameter - post) / 2, row, '=clear_in', 'in')
    published(longestBar({ diameter, cover: cover.castAgainstEarth.value }) ?? Number.NaN, row, '=bar_in', 'in')
  })
})
