import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { reshaped, type Spread, type SpreadKind, spreadProblem, valueAtShare } from '../../../src/core/uncertainty/distributions.ts'
import { normalAtShare, normalShareBelow } from '../../../src/core/uncertainty/normal.ts'
import { randomNumbers } from '../../../src/core/uncertainty/randomNumbers.ts'
import { close } from '../../close.ts'
import { jStat } from '../../statistics.ts'

const shares = [1e-6, 1e-3, 0.01, 0.05, 0.1, 0.25, 0.5, 0.6, 0.75, 0.9, 0.95, 0.99, 0.999, 1 - 1e-6]

describe('[N2] the normal distribution', () => {
  it('agrees with a general statistics library', () => {
    for (const share of shares) close(normalAtShare(share), jStat.normal.inv(share, 0, 1), { abs: 1e-9, rel: 1e-9 })
    for (const z of [-6, -3.1, -1.96, -0.3, 0, 0.7, 1.28, 2.5, 5])
      close(normalShareBelow(z), jStat.normal.cdf(z, 0, 1), { abs: 1e-12, rel: 0 })
  })

  it('goes there and back', () => {
    for (let i = 1; i < 2000; i++) close(normalShareBelow(normalAtShare(i / 2000)), i / 2000, { abs: 2e-15, rel: 0 })
  })

  // Source: printed tables of the normal distribution, five decimals.
  it.each([
    [0.9, 1.28155],
    [0.95, 1.64485],
    [0.975, 1.95996],
    [0.99, 2.32635],
    [0.999, 3.09023],
  ])('at %d stands at the printed %d', (share, printed) => close(normalAtShare(share), printed, { abs: 5e-6, rel: 0 }))
})

describe('[N2] spreads', () => {
  const wide = 40
  const cases: readonly (readonly [string, Spread, (share: number) => number])[] = [
    ['normal', { kind: 'normal', middle: 30, sd: 3, low: 30 - wide, high: 30 + wide }, (p) => jStat.normal.inv(p, 30, 3)],
    [
      'lognormal',
      { kind: 'lognormal', middle: 1.1, cov: 0.3, low: 1e-4, high: 1e4 },
      (p) => jStat.lognormal.inv(p, Math.log(1.1), Math.sqrt(Math.log(1 + 0.09))),
    ],
    ['triangular', { kind: 'triangular', low: -3, peak: 0, high: 2 }, (p) => jStat.triangular.inv(p, -3, 2, 0)],
    ['triangular with its peak at one end', { kind: 'triangular', low: 0, peak: 0, high: 1 }, (p) => jStat.triangular.inv(p, 0, 1, 0)],
    ['uniform', { kind: 'uniform', low: 2, high: 5 }, (p) => jStat.uniform.inv(p, 2, 5)],
  ]

  it.each(cases)('%s agrees with a general statistics library', (_, spread, want) => {
    const valueAt = valueAtShare(spread)
    for (const share of shares) close(valueAt(share), want(share), { abs: 1e-9, rel: 1e-8 }, String(share))
  })

  it('cut at its ends, a normal is the same curve scaled to the whole', () => {
    const valueAt = valueAtShare({ kind: 'normal', middle: 30, sd: 3, low: 27, high: 33.6 })
    const [from, to] = [jStat.normal.cdf(27, 30, 3), jStat.normal.cdf(33.6, 30, 3)]
    for (const share of shares)
      close(jStat.normal.cdf(valueAt(share), 30, 3), from + share * (to - from), { abs: 1e-10, rel: 0 }, String(share))
  })

  it('cut at its ends, a lognormal is the same curve scaled to the whole', () => {
    const sigma = Math.sqrt(Math.log(1 + 0.18 ** 2))
    const valueAt = valueAtShare({ kind: 'lognormal', middle: 1, cov: 0.18, low: 0.7, high: 1.2 })
    const [from, to] = [jStat.lognormal.cdf(0.7, 0, sigma), jStat.lognormal.cdf(1.2, 0, sigma)]
    for (const share of shares)
      close(jStat.lognormal.cdf(valueAt(share), 0, sigma), from + share * (to - from), { abs: 1e-9, rel: 0 }, String(share))
  })

  it.each(cases)('%s: a thousand draws have its quartiles', (_, spread) => {
    const valueAt = valueAtShare(spread)
    const random = randomNumbers(11)
    const drawn = Array.from({ length: 20_000 }, () => valueAt(random())).sort((a, b) => a - b)
    for (const share of [0.25, 0.5, 0.75]) {
      const found = drawn.filter((value) => value < valueAt(share)).length / drawn.length
      close(found, share, { abs: 5 * Math.sqrt(0.25 / drawn.length), rel: 0 })
    }
  })

  const figure = fc.integer({ min: -500, max: 500 }).map((value) => value / 100)
  const anySpread: fc.Arbitrary<Spread> = fc.oneof(
    fc.record({ kind: fc.constant('normal' as const), middle: figure, sd: figure, low: figure, high: figure }),
    fc.record({ kind: fc.constant('lognormal' as const), middle: figure, cov: figure, low: figure, high: figure }),
    fc.record({ kind: fc.constant('triangular' as const), low: figure, peak: figure, high: figure }),
    fc.record({ kind: fc.constant('uniform' as const), low: figure, high: figure }),
  )

  it('takes another shape within the same ends, and back to one that can be drawn from', () => {
    const kinds: readonly SpreadKind[] = ['normal', 'lognormal', 'triangular', 'uniform']
    for (const [, spread] of cases)
      for (const kind of kinds) {
        const changed = reshaped(spread, kind)
        expect(changed).toMatchObject({ kind, low: spread.low, high: spread.high })
        if (spread.low > 0) expect([spread.kind, kind, spreadProblem(changed)]).toEqual([spread.kind, kind, null])
      }
    expect(reshaped({ kind: 'triangular', low: -3, peak: 0, high: 2 }, 'normal')).toEqual({
      kind: 'normal',
      middle: 0,
      sd: 1.25,
      low: -3,
      high: 2,
    })
  })

  it('any that has no problem gives rising numbers between its ends, and no other kind of number', () => {
    let drawn = 0
    fc.assert(
      fc.property(anySpread, (spread) => {
        if (spreadProblem(spread) !== null) return
        drawn++
        const valueAt = valueAtShare(spread)
        let last = spread.low
        for (const share of [1e-12, ...shares, 1 - 1e-12]) {
          const value = valueAt(share)
          expect(value).toBeGreaterThanOrEqual(last)
          expect(value).toBeLessThanOrEqual(spread.high)
          last = value
        }
      }),
      { numRuns: 4000, seed: 2 },
    )
    expect(drawn).toBeGreaterThan(400)
  })

  it.each<readonly [Spread, ReturnType<typeof spreadProblem>]>([
    [{ kind: 'uniform', low: 1, high: 1 }, 'ends-out-of-order'],
    [{ kind: 'uniform', low: 2, high: 1 }, 'ends-out-of-order'],
    [{ kind: 'uniform', low: Number.NaN, high: 1 }, 'not-a-number'],
    [{ kind: 'uniform', low: 0, high: Number.POSITIVE_INFINITY }, 'not-a-number'],
    [{ kind: 'triangular', low: 0, peak: 2, high: 1 }, 'peak-outside-ends'],
    [{ kind: 'normal', middle: 0, sd: 0, low: -1, high: 1 }, 'no-width'],
    [{ kind: 'normal', middle: 0, sd: -1, low: -1, high: 1 }, 'no-width'],
    [{ kind: 'normal', middle: 0, sd: 0.01, low: 5, high: 6 }, 'all-cut-off'],
    [{ kind: 'lognormal', middle: 1, cov: 0.2, low: 0, high: 2 }, 'not-above-zero'],
    [{ kind: 'lognormal', middle: -1, cov: 0.2, low: 0.5, high: 2 }, 'not-above-zero'],
    [{ kind: 'lognormal', middle: 1, cov: 0.2, low: 0.5, high: 2 }, null],
  ])('%j: %s', (spread, problem) => expect(spreadProblem(spread)).toBe(problem))
})
