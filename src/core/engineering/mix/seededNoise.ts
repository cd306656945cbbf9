/** Scrambles 32 bits so that neighbouring numbers have nothing in common. */
function scramble(bits: number): number {
  let h = (bits + 0x9e3779b9) | 0
  h = Math.imul(h ^ (h >>> 15), 0x2c1b3c6d)
  h = Math.imul(h ^ (h >>> 12), 0x297a2d39)
  return (h ^ (h >>> 15)) >>> 0
}

/** A number from 0 to 1 that belongs to a crossing of a grid, the same for the same seed on every machine. */
const atCrossing = (seed: number, i: number, j: number): number => scramble(scramble(scramble(seed) + i) + j) / 4294967296

const ease = (t: number): number => t * t * (3 - 2 * t)

/**
 * Smooth noise over a plane: a picture of unevenness, drawn from a seed and nothing else.
 * @param seed whole number; the same seed gives the same picture [1]
 * @param u first coordinate, in steps of the grid [1]
 * @param v second coordinate, in steps of the grid [1]
 * @returns 0 to 1 [1]
 * Formula: values at the crossings of a unit grid, eased between them
 * Valid: illustration. Outside: no statistics of any real thing.
 * Source: definition
 * Checked by: tests/core/engineering/mix/dryPourScatter.test.ts
 */
export function seededNoise(seed: number, u: number, v: number): number {
  const i = Math.floor(u)
  const j = Math.floor(v)
  const s = ease(u - i)
  const t = ease(v - j)
  const low = atCrossing(seed, i, j) * (1 - s) + atCrossing(seed, i + 1, j) * s
  const high = atCrossing(seed, i, j + 1) * (1 - s) + atCrossing(seed, i + 1, j + 1) * s
  return low * (1 - t) + high * t
}
