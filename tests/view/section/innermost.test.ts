import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { depthInside, innermost } from '../../../src/view/section/innermost.ts'
import { close } from '../../close.ts'

const square = [
  [0, 0],
  [2, 0],
  [2, 2],
  [0, 2],
] as const
/** An L: the middle of its box lies outside it. */
const angle = [
  [0, 0],
  [4, 0],
  [4, 0.5],
  [0.5, 0.5],
  [0.5, 4],
  [0, 4],
] as const

describe('[V11] where a leader may end', () => {
  it('is measured from the edges, negative outside', () => {
    close(depthInside(square, 1, 1), 1, { abs: 1e-12, rel: 0 })
    close(depthInside(square, 0.25, 1), 0.25, { abs: 1e-12, rel: 0 })
    close(depthInside(square, 3, 1), -1, { abs: 1e-12, rel: 0 })
    close(depthInside(square, 3, 3), -Math.SQRT2, { abs: 1e-12, rel: 0 })
  })

  it('is always inside, also in a bent shape', () => {
    for (const [x, y] of innermost(angle, 4)) expect(depthInside(angle, x, y)).toBeGreaterThan(0.1)
    expect(innermost(angle, 4).length).toBeGreaterThan(1)
  })

  it('is well inside any rectangle', () => {
    const size = fc.double({ min: 0.01, max: 3, noNaN: true })
    fc.assert(
      fc.property(size, size, (width, height) => {
        const box = [
          [0, 0],
          [width, 0],
          [width, height],
          [0, height],
        ] as const
        const [best] = innermost(box, 1)
        expect(best).toBeDefined()
        if (best) expect(depthInside(box, ...best)).toBeGreaterThan(0.3 * Math.min(width, height))
      }),
    )
  })

  it('is nowhere in a shape without area', () => {
    expect(
      innermost(
        [
          [0, 0],
          [1, 0],
          [2, 0],
        ],
        2,
      ),
    ).toEqual([])
  })
})
