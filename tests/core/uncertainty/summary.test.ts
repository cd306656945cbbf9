import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { countBelow, dotsOf, histogram, inThousand, outOf, quantile, tallies } from '../../../src/core/uncertainty/summary.ts'
import { close } from '../../close.ts'
import { jStat } from '../../statistics.ts'

const anyValues = fc
  .array(fc.integer({ min: -1000, max: 1000 }), { minLength: 2, maxLength: 200 })
  .map((values) => Float64Array.from(values).sort())
const sum = (values: Iterable<number>): number => [...values].reduce((all, value) => all + value, 0)

describe('[N5] what a study says in the end', () => {
  it('quantiles agree with a general statistics library', () => {
    fc.assert(
      fc.property(anyValues, (values) => {
        const shares = [0, 0.05, 0.3, 0.5, 0.95, 1]
        const want = jStat.quantiles([...values], shares, 1, 1)
        shares.forEach((share, i) => {
          close(quantile(values, share), want[i] ?? Number.NaN, { abs: 1e-9, rel: 0 })
        })
      }),
      { numRuns: 300, seed: 1 },
    )
  })

  it('a histogram holds every value once, in the bin that it lies in', () => {
    fc.assert(
      fc.property(anyValues, fc.integer({ min: 1, max: 60 }), (values, bins) => {
        const { from, width, counts } = histogram(values, bins)
        expect(sum(counts)).toBe(values.length)
        if (width === 0) expect(new Set(values).size).toBe(1)
        for (let bin = 1; bin < counts.length; bin++) {
          const edge = from + bin * width
          const near = values.filter((value) => Math.abs(value - edge) < 1e-9).length
          expect(Math.abs(sum(counts.subarray(0, bin)) - countBelow(values, edge))).toBeLessThanOrEqual(near)
        }
      }),
      { numRuns: 300, seed: 2 },
    )
  })

  it('counts what is less, and not what is alike', () => {
    fc.assert(
      fc.property(anyValues, fc.integer({ min: -1100, max: 1100 }), (values, limit) => {
        expect(countBelow(values, limit)).toBe(values.filter((value) => value < limit).length)
      }),
      { numRuns: 300, seed: 3 },
    )
  })

  it('parts of a round total add up to it, and none is more than one off', () => {
    fc.assert(
      fc.property(fc.array(fc.nat({ max: 20_000 }), { minLength: 1, maxLength: 8 }), fc.constantFrom(100, 1000), (counts, total) => {
        const parts = outOf(total, counts)
        const all = sum(counts)
        expect(sum(parts)).toBe(all === 0 ? 0 : total)
        if (all === 0) return
        counts.forEach((count, i) => {
          expect(Math.abs((parts[i] ?? 0) - (count * total) / all)).toBeLessThan(1)
        })
      }),
      { numRuns: 500, seed: 4 },
    )
  })

  it('says a count in a thousand, and never that few are none or nearly all are all', () => {
    const said = (count: number, of: number) => inThousand(count, of)
    expect(said(0, 20_000)).toEqual({ kind: 'none', count: 0 })
    expect(said(9, 20_000)).toEqual({ kind: 'under-one', count: 0 })
    expect(said(10, 20_000)).toEqual({ kind: 'count', count: 1 })
    expect(said(4293, 20_000)).toEqual({ kind: 'count', count: 215 })
    expect(said(19_991, 20_000)).toEqual({ kind: 'over-all-but-one', count: 999 })
    expect(said(20_000, 20_000)).toEqual({ kind: 'all', count: 1000 })
    expect(said(0, 0)).toEqual({ kind: 'none', count: 0 })
  })

  it('heaps dots that each stand for the same share of the values', () => {
    fc.assert(
      fc.property(anyValues, (values) => {
        const [least = 0, most = 0] = [values[0], values.at(-1)]
        const dots = dotsOf(values, 100, least, (most - least) / 20)
        expect(dots).toHaveLength(100)
        expect(dots.every(({ value }, i) => value >= (dots[i - 1]?.value ?? least) && value <= most)).toBe(true)
        for (const column of new Set(dots.map((dot) => dot.column))) {
          const levels = dots.filter((dot) => dot.column === column).map(({ level }) => level)
          expect(levels).toEqual(levels.map((_, i) => i))
        }
      }),
      { numRuns: 200, seed: 5 },
    )
  })

  it('lists what happened most often first', () => {
    expect(
      tallies(
        new Map([
          ['a', 2],
          ['b', 5],
          ['c', 2],
        ]),
      ).map(({ id }) => id),
    ).toEqual(['b', 'a', 'c'])
  })
})
