import { describe, expect, it } from 'vitest'
import { greatestSeed, randomNumbers, words } from '../../../src/core/uncertainty/randomNumbers.ts'
import { close } from '../../close.ts'

const take = (next: () => number, count: number): number[] => Array.from({ length: count }, next)

describe('[N1] numbers that look random', () => {
  // Source: the first words that the authors' own xoshiro128starstar.c (version 1.1) gives from state 1, 2, 3, 4, as two open-source
  // ports of it record them in their tests.
  it('are the published words of xoshiro128**', () => {
    expect(take(words([1, 2, 3, 4]), 10)).toEqual([
      11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
    ])
  })

  it('are the same for the same seed, and others for the next', () => {
    for (const seed of [0, 1, 2024, greatestSeed]) {
      expect(take(randomNumbers(seed), 50)).toEqual(take(randomNumbers(seed), 50))
      expect(take(randomNumbers(seed), 5)).not.toEqual(take(randomNumbers((seed + 1) % (greatestSeed + 1)), 5))
    }
  })

  it('stay inside 0 and 1, with the mean, the spread and the flatness of even numbers', () => {
    const count = 200_000
    const counts = new Array<number>(20).fill(0)
    let sum = 0
    let squares = 0
    let pairs = 0
    let last = 0.5
    const next = randomNumbers(7)
    for (let i = 0; i < count; i++) {
      const value = next()
      expect(value > 0 && value < 1).toBe(true)
      sum += value
      squares += (value - 0.5) ** 2
      pairs += (value - 0.5) * (last - 0.5)
      last = value
      const bin = Math.floor(value * 20)
      counts[bin] = (counts[bin] ?? 0) + 1
    }
    // Five standard errors each.
    close(sum / count, 0.5, { abs: 5 * Math.sqrt(1 / 12 / count), rel: 0 })
    close(squares / count, 1 / 12, { abs: 5 * Math.sqrt(1 / 180 / count), rel: 0 })
    close(pairs / count, 0, { abs: (5 / 12) * Math.sqrt(1 / count), rel: 0 })
    const expected = count / 20
    const chiSquare = counts.reduce((all, found) => all + (found - expected) ** 2 / expected, 0)
    // 19 degrees of freedom: less than 1 in 1,000 above 43.8. Source: printed tables of chi-square.
    expect(chiSquare).toBeLessThan(43.8)
  })

  it('of neighbouring seeds have nothing in common', () => {
    const firsts = Array.from({ length: 4000 }, (_, seed) => randomNumbers(seed)())
    expect(new Set(firsts).size).toBe(4000)
    close(firsts.reduce((all, one) => all + one, 0) / 4000, 0.5, { abs: 5 * Math.sqrt(1 / 12 / 4000), rel: 0 })
  })
})
