import { normalAtShare, normalShareBelow } from './normal.ts'

/**
 * How a figure may spread. All have ends: nothing is drawn beyond `low` and `high`.
 * Normal: `middle` is its mean before the ends are cut off, `sd` its standard deviation.
 * Lognormal: `middle` is its median before the ends are cut off, `cov` its standard deviation over its mean.
 */
export type Spread =
  | Readonly<{ kind: 'normal'; middle: number; sd: number; low: number; high: number }>
  | Readonly<{ kind: 'lognormal'; middle: number; cov: number; low: number; high: number }>
  | Readonly<{ kind: 'triangular'; low: number; peak: number; high: number }>
  | Readonly<{ kind: 'uniform'; low: number; high: number }>
export type SpreadKind = Spread['kind']

export type SpreadProblem = 'not-a-number' | 'ends-out-of-order' | 'peak-outside-ends' | 'no-width' | 'not-above-zero' | 'all-cut-off'

/** What is wrong with a spread that somebody set; null when it can be drawn from. */
export function spreadProblem(spread: Spread): SpreadProblem | null {
  const { kind: _, ...figures } = spread
  if (Object.values(figures).some((figure) => !Number.isFinite(figure))) return 'not-a-number'
  if (!(spread.low < spread.high)) return 'ends-out-of-order'
  if (spread.kind === 'triangular' && !(spread.low <= spread.peak && spread.peak <= spread.high)) return 'peak-outside-ends'
  if (spread.kind === 'normal' && !(spread.sd > 0)) return 'no-width'
  if (spread.kind === 'lognormal' && !(spread.cov > 0)) return 'no-width'
  if (spread.kind === 'lognormal' && !(spread.middle > 0 && spread.low > 0)) return 'not-above-zero'
  if (spread.kind !== 'normal' && spread.kind !== 'lognormal') return null
  const [from, to] = cutShares(standard(spread))
  return to - from > 1e-9 ? null : 'all-cut-off'
}

type Standard = Readonly<{ middle: number; sd: number; low: number; high: number; back: (value: number) => number }>

/** A lognormal is a normal of the logarithm: its variance is ln(1 + cov^2). Source: definition. */
const standard = (spread: Extract<Spread, { kind: 'normal' | 'lognormal' }>): Standard =>
  spread.kind === 'normal'
    ? { ...spread, back: (value) => value }
    : {
        middle: Math.log(spread.middle),
        sd: Math.sqrt(Math.log1p(spread.cov ** 2)),
        low: Math.log(spread.low),
        high: Math.log(spread.high),
        back: Math.exp,
      }

const cutShares = ({ middle, sd, low, high }: Standard): readonly [from: number, to: number] => [
  normalShareBelow((low - middle) / sd),
  normalShareBelow((high - middle) / sd),
]

/**
 * The value below which a share of the spread lies: a number between 0 and 1 in, a drawn value out.
 * @param spread one without a problem
 * Formula: inverse of the distribution, cut at its ends and scaled to the whole; triangular low + sqrt(u (high - low)(peak - low))
 * Source: definition. Checked by: tests/core/uncertainty/distributions.test.ts
 */
export function valueAtShare(spread: Spread): (share: number) => number {
  const { low, high } = spread
  const width = high - low
  if (spread.kind === 'uniform') return (share) => low + share * width
  if (spread.kind === 'triangular') {
    const { peak } = spread
    const turn = (peak - low) / width
    return (share) => (share < turn ? low + Math.sqrt(share * width * (peak - low)) : high - Math.sqrt((1 - share) * width * (high - peak)))
  }
  const { middle, sd, back } = standard(spread)
  const [from, to] = cutShares(standard(spread))
  const whole = to - from
  return (share) => Math.min(high, Math.max(low, back(middle + sd * normalAtShare(from + share * whole))))
}

/** The same range in another shape, as near as the shapes allow: ends are kept, and a middle or a peak is taken over or set between them. */
export function reshaped(spread: Spread, kind: SpreadKind): Spread {
  const { low, high } = spread
  const middle = 'middle' in spread ? spread.middle : 'peak' in spread ? spread.peak : (low + high) / 2
  // Two standard deviations either side hold 954 in 1,000 of a normal spread.
  const sd = 'sd' in spread ? spread.sd : 'cov' in spread ? spread.cov * spread.middle : (high - low) / 4
  switch (kind) {
    case 'normal':
      return { kind, middle, sd, low, high }
    case 'lognormal':
      return { kind, middle, cov: sd / middle, low, high }
    case 'triangular':
      return { kind, low, peak: Math.min(high, Math.max(low, middle)), high }
    case 'uniform':
      return { kind, low, high }
  }
}
