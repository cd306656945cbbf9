import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { InkPot, type Pixel } from '../../src/view/section/ink.ts'
import { outside } from '../../src/view/section/paper/clipped.ts'
import { paperScales, scaleBar, scaleOf, scaleWords } from '../../src/view/section/paper/drawingScale.ts'
import { inkShapes } from '../../src/view/section/paper/inkPaths.ts'
import { close } from '../close.ts'

describe('[E16] lines on paper', () => {
  it('reads back what the ink was told to draw', () => {
    const pot = new InkPot()
    pot.line('dimension', [1, 2], [3, 4.5], [-6, 7])
    pot.shape('dimension', [0, 0], [10, 0], [10, 10])
    pot.dot('dimension', [5, 6], 3)
    expect(inkShapes(pot.paths.dimension)).toEqual([
      {
        kind: 'run',
        points: [
          [1, 2],
          [3, 4.5],
          [-6, 7],
        ],
        closed: false,
      },
      {
        kind: 'run',
        points: [
          [0, 0],
          [10, 0],
          [10, 10],
        ],
        closed: true,
      },
      { kind: 'dot', centre: [5, 6], radius: 3 },
    ])
    expect(inkShapes('')).toEqual([])
    expect(() => inkShapes('M0 0Q1 1 2 2')).toThrow()
  })

  it('leaves out what figures hide', () => {
    const box = (x: number, y: number, width: number, height: number) => ({ x, y, width, height })
    expect(outside([0, 0], [10, 0], [box(4, -1, 2, 2)])).toEqual([
      [
        [0, 0],
        [4, 0],
      ],
      [
        [6, 0],
        [10, 0],
      ],
    ])
    expect(outside([0, 0], [10, 0], [box(-1, -1, 20, 2)])).toEqual([])
    expect(outside([0, 0], [10, 0], [box(0, 5, 10, 2)])).toEqual([
      [
        [0, 0],
        [10, 0],
      ],
    ])
    expect(outside([0, 0], [10, 0], [box(2, -1, 3, 2), box(4, -1, 3, 2)])).toEqual([
      [
        [0, 0],
        [2, 0],
      ],
      [
        [7, 0],
        [10, 0],
      ],
    ])
  })

  it('loses nothing that lies free, and keeps nothing that is hidden', () => {
    const place = fc.integer({ min: -50, max: 50 })
    const pixel: fc.Arbitrary<Pixel> = fc.tuple(place, place)
    const boxes = fc.array(
      fc.record({ x: place, y: place, width: fc.integer({ min: 1, max: 40 }), height: fc.integer({ min: 1, max: 40 }) }),
      { maxLength: 4 },
    )
    fc.assert(
      fc.property(pixel, pixel, boxes, fc.integer({ min: 0, max: 1000 }), (a, b, hiding, share) => {
        fc.pre(a[0] !== b[0] || a[1] !== b[1])
        const at: Pixel = [a[0] + ((b[0] - a[0]) * share) / 1000, a[1] + ((b[1] - a[1]) * share) / 1000]
        const depth = Math.max(
          ...hiding.map((box) => Math.min(at[0] - box.x, box.x + box.width - at[0], at[1] - box.y, box.y + box.height - at[1])),
          -1,
        )
        if (Math.abs(depth) < 1e-6) return
        const length = Math.hypot(b[0] - a[0], b[1] - a[1])
        const along = ([x, y]: Pixel) => ((x - a[0]) * (b[0] - a[0]) + (y - a[1]) * (b[1] - a[1])) / length
        const isLeft = outside(a, b, hiding).some(([p, q]) => along(p) <= along(at) + 1e-9 && along(at) <= along(q) + 1e-9)
        expect(isLeft).toBe(depth < 0)
      }),
      { numRuns: 3000, seed: 3 },
    )
  })
})

describe('[E17] scales of the drawing board', () => {
  it('are those that architects and engineers use', () => {
    // 3/4 inch to the foot is 1:16, 1 1/2 is 1:8. Source: definition (12 inches over the inches to the foot).
    for (const [words, inches] of [
      ['3"', 3],
      ['1 1/2"', 1.5],
      ['3/4"', 0.75],
      ['1/2"', 0.5],
      ['3/8"', 0.375],
      ['1/4"', 0.25],
      ['3/16"', 0.1875],
      ['1/8"', 0.125],
    ] as const)
      expect(scaleWords(12 / inches, 'us')).toBe(`${words} = 1'-0" (1:${12 / inches})`)
    expect(scaleWords(20, 'metric')).toBe('1:20')
  })

  it('come back from pixels, and get smaller step by step', () => {
    for (const units of ['us', 'metric'] as const) {
      const scales = paperScales(units)
      expect([...scales].sort((a, b) => b - a)).toEqual(scales)
      for (const scale of scales) close(scaleOf(scale), Math.round(scaleOf(scale)), { abs: 1e-9, rel: 0 })
    }
  })

  it('a bar is never far from the length that is wanted', () => {
    for (const units of ['us', 'metric'] as const)
      for (const perMetre of paperScales(units)) {
        const bar = scaleBar(perMetre, units, 190)
        const length = (bar.parts + 1) * bar.step * perMetre
        expect(length).toBeGreaterThan(190 / 2)
        expect(length).toBeLessThan(190 * 2.2)
      }
  })
})
