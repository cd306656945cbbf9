import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { shared } from '../../../src/view/sheet/shared.ts'

const high = (column: readonly number[], heights: readonly number[], gap: number): number =>
  column.reduce((sum, i) => sum + (heights[i] ?? 0) + gap, -gap)

describe('blocks shared out over columns', () => {
  it('keeps every block once, in order in its column, the first one first, and no column runs over', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 5, max: 90, noNaN: true }), { minLength: 1, maxLength: 11 }),
        fc.array(fc.double({ min: 20, max: 180, noNaN: true }), { minLength: 1, maxLength: 4 }),
        (heights, rooms) => {
          const columns = shared(heights, rooms, 2)
          if (columns === null) return
          expect(columns).toHaveLength(rooms.length)
          expect(columns.flat().toSorted((a, b) => a - b)).toEqual(heights.map((_, i) => i))
          expect(columns.flat()[0]).toBe(0)
          columns.forEach((column, i) => {
            expect(column).toEqual(column.toSorted((a, b) => a - b))
            expect(high(column, heights, 2)).toBeLessThanOrEqual((rooms[i] ?? 0) + 1e-6)
          })
        },
      ),
    )
  })

  it('reads on from column to column where that can be, as evenly filled as can be', () =>
    expect(shared([30, 30, 30, 30], [100, 100], 2)).toEqual([
      [0, 1],
      [2, 3],
    ]))

  it('finds the one way there is, and says where there is none', () => {
    expect(shared([60, 50, 50, 40], [100, 100], 0)).toEqual([
      [0, 3],
      [1, 2],
    ])
    expect(shared([60, 50, 50, 41], [100, 100], 0)).toBeNull()
    expect(shared([10], [-5, -5], 2)).toBeNull()
  })

  it('finds room for many blocks that only just fit', () => {
    const heights = [22, 33, 35, 33, 61, 21, 16, 164, 80, 70, 19, 14]
    const columns = shared(heights, [92, 91, 185, 200], 0)
    expect(columns?.flat()).toHaveLength(heights.length)
  })

  it('keeps the early ones in the first two columns', () => {
    const columns = shared([20, 30, 60, 60], [60, 60, 60, 60], 0, 2)
    expect(columns?.slice(0, 2).flat()).toEqual(expect.arrayContaining([0, 1]))
  })
})
