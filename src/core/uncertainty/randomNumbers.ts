/** Gives the next number, evenly spread over 0 to 1, ends left out. */
export type RandomNumbers = () => number

/** A seed is a whole number from 0 to this. */
export const greatestSeed = 0xffffffff

/**
 * Numbers that look random and are the same for the same seed, on every machine: xoshiro128**, its four words filled from the
 * seed by splitmix32. 32 bits a number, repeats after 2^128 - 1. Good for drawing samples; never for secrets.
 * @param seed whole number, 0 to `greatestSeed`
 * Source: Blackman and Vigna, Scrambled linear pseudorandom number generators, 2021.
 * Checked by: tests/core/uncertainty/randomNumbers.test.ts
 */
export function randomNumbers(seed: number): RandomNumbers {
  const next = words(fourWords(seed))
  return () => (next() + 0.5) / 4294967296
}

/** The words of xoshiro128** from a state of four words, not all zero. */
export function words([a, b, c, d]: readonly [number, number, number, number]): () => number {
  let [s0, s1, s2, s3] = [a | 0, b | 0, c | 0, d | 0]
  return () => {
    const product = Math.imul(s1, 5)
    const word = Math.imul((product << 7) | (product >>> 25), 9) >>> 0
    const shifted = s1 << 9
    s2 ^= s0
    s3 ^= s1
    s1 ^= s2
    s0 ^= s3
    s2 ^= shifted
    s3 = (s3 << 11) | (s3 >>> 21)
    return word
  }
}

/** Four words that differ wildly between neighbouring seeds: splitmix32, a mixing of a counter that grows by a fixed odd step. */
function fourWords(seed: number): readonly [number, number, number, number] {
  let counter = seed | 0
  const word = () => {
    counter = (counter + 0x9e3779b9) | 0
    let mixed = Math.imul(counter ^ (counter >>> 16), 0x21f0aaad)
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97)
    return (mixed ^ (mixed >>> 15)) >>> 0
  }
  return [word(), word(), word(), word()]
}
