import type { Histogram, LinkCount } from './sureResult.ts'

/**
 * Value below which a share of sorted values lies, straight between neighbours: at share p the value stands at p (n - 1) steps from
 * the first. Source: definition. Checked by: tests/core/uncertainty/summary.test.ts
 * @param sorted ascending, at least one
 */
export function quantile(sorted: Float64Array, share: number): number {
  const place = share * (sorted.length - 1)
  const under = Math.floor(place)
  const low = sorted[under] as number
  const high = sorted[Math.min(under + 1, sorted.length - 1)] as number
  return low + (place - under) * (high - low)
}

/** Counts in `bins` bins of equal width from the least to the greatest of sorted values; one bin of no width where all are the same. */
export function histogram(sorted: Float64Array, bins: number): Histogram {
  const from = sorted[0] as number
  const width = ((sorted[sorted.length - 1] as number) - from) / bins
  if (!(width > 0)) return { from, width: 0, counts: Uint32Array.of(sorted.length) }
  const counts = new Uint32Array(bins)
  for (const value of sorted) {
    const bin = Math.min(bins - 1, Math.floor((value - from) / width))
    counts[bin] = (counts[bin] as number) + 1
  }
  return { from, width, counts }
}

/** How many sorted values are less than a limit. */
export function countBelow(sorted: Float64Array, limit: number): number {
  let low = 0
  let high = sorted.length
  while (low < high) {
    const middle = (low + high) >> 1
    if ((sorted[middle] as number) < limit) low = middle + 1
    else high = middle
  }
  return low
}

/** Most often first; of equal ones the first met. */
export const tallies = (counts: ReadonlyMap<string, number>): readonly LinkCount[] =>
  [...counts].map(([id, count]) => ({ id, count })).sort((a, b) => b.count - a.count)

/**
 * Whole parts of a round total that stand to each other as the counts do, as near as whole parts can: the largest remainders get what is
 * left over. For pictures that show every count out of the same total.
 */
export function outOf(total: number, counts: readonly number[]): readonly number[] {
  const sum = counts.reduce((all, count) => all + count, 0)
  if (sum === 0) return counts.map(() => 0)
  const exact = counts.map((count) => (count * total) / sum)
  const parts = exact.map(Math.floor)
  const left = total - parts.reduce((all, part) => all + part, 0)
  const order = exact.map((value, i) => [value - Math.floor(value), i] as const).sort(([a, i], [b, j]) => b - a || i - j)
  for (const [, i] of order.slice(0, Math.round(left))) parts[i] = (parts[i] as number) + 1
  return parts
}

/** A count out of a thousand, and whether rounding hides that it was none, few, nearly all or all. */
export type InThousand = Readonly<{ kind: 'none' | 'under-one' | 'count' | 'over-all-but-one' | 'all'; count: number }>

export function inThousand(count: number, of: number): InThousand {
  const rounded = of === 0 ? 0 : Math.round((1000 * count) / of)
  if (count === 0) return { kind: 'none', count: 0 }
  if (count === of) return { kind: 'all', count: 1000 }
  if (rounded === 0) return { kind: 'under-one', count: 0 }
  return rounded === 1000 ? { kind: 'over-all-but-one', count: 999 } : { kind: 'count', count: rounded }
}

/** Dots that stand for sorted values, each for the same number of them: the value in the middle of its share, and its place in a heap. */
export type Dot = Readonly<{ value: number; column: number; level: number }>

/**
 * @param dots how many
 * @param from left edge of column 0, in the values' unit
 * @param width of a column; dots of one column are heaped from level 0 up
 */
export function dotsOf(sorted: Float64Array, dots: number, from: number, width: number): readonly Dot[] {
  const heaps = new Map<number, number>()
  return Array.from({ length: dots }, (_, i) => {
    const value = quantile(sorted, (i + 0.5) / dots)
    const column = width > 0 ? Math.floor((value - from) / width) : 0
    const level = heaps.get(column) ?? 0
    heaps.set(column, level + 1)
    return { value, column, level }
  })
}
