import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { packed } from '../../../src/view/sheet/packed.ts'

describe('blocks in columns', () => {
  it('keeps every block once, and no column of several blocks runs over', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 1, max: 90, noNaN: true }), { maxLength: 30 }), (heights) => {
        const pages = packed(heights, 100, 2)
        expect(pages.flat(2).toSorted((a, b) => a - b)).toEqual(heights.map((_, i) => i))
        for (const column of pages.flat()) {
          const high = column.reduce((sum, i) => sum + (heights[i] ?? 0), 0) + 2 * (column.length - 1)
          expect(high).toBeLessThanOrEqual(100 + 1e-9)
        }
        for (const page of pages) expect(page.length).toBeLessThanOrEqual(2)
      }),
    )
  })
  it('takes one page whenever any order of the blocks fits two columns, the first block first', () => {
    expect(packed([60, 70, 40, 30], 100, 0)).toEqual([
      [
        [0, 2],
        [1, 3],
      ],
    ])
    expect(packed([60, 50, 50, 40], 100, 0)).toEqual([
      [
        [0, 3],
        [1, 2],
      ],
    ])
    expect(packed([60, 50, 50, 41], 100, 0)).toHaveLength(2)
  })
  it('shares a last lonely column between both sides', () => {
    expect(packed([30, 30, 30], 100, 2)).toEqual([[[0], [1, 2]]])
  })
})
