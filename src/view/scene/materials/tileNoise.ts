/** Edge of every baked tile [px]. */
export const tileSize = 512

/** Whole-number hash to 0..1, the same on every machine. */
export const chanceAt = (x: number, y: number, seed: number): number => {
  let h = Math.imul(x, 0x27d4eb2d) ^ Math.imul(y, 0x165667b1) ^ Math.imul(seed, 0x85ebca6b)
  h = Math.imul(h ^ (h >>> 15), 0x2c1b3c6d)
  h = Math.imul(h ^ (h >>> 12), 0x297a2d39)
  return ((h ^ (h >>> 15)) >>> 0) / 4294967296
}

const ease = (t: number): number => t * t * (3 - 2 * t)

/** 0 below `from`, 1 above `to`, eased between; `from` may be the larger. */
export const step = (from: number, to: number, value: number): number => ease(Math.min(1, Math.max(0, (value - from) / (to - from))))

/** Adds value noise of `across` by `up` cells to `sum`, weighted; it repeats without a seam. */
function addOctave(sum: Float32Array, across: number, up: number, weight: number, seed: number): void {
  const lattice = Float32Array.from({ length: across * up }, (_, k) => weight * chanceAt(k % across, Math.floor(k / across), seed))
  const left = new Int32Array(tileSize)
  const right = new Int32Array(tileSize)
  const share = new Float32Array(tileSize)
  for (let x = 0; x < tileSize; x++) {
    const at = (x * across) / tileSize
    left[x] = Math.floor(at)
    right[x] = (Math.floor(at) + 1) % across
    share[x] = ease(at - Math.floor(at))
  }
  for (let y = 0, i = 0; y < tileSize; y++) {
    const at = (y * up) / tileSize
    const t = ease(at - Math.floor(at))
    const low = Math.floor(at) * across
    const high = ((Math.floor(at) + 1) % up) * across
    for (let x = 0; x < tileSize; x++, i++) {
      const [l, r, s] = [left[x] as number, right[x] as number, share[x] as number]
      const under = (lattice[low + l] as number) * (1 - s) + (lattice[low + r] as number) * s
      const over = (lattice[high + l] as number) * (1 - s) + (lattice[high + r] as number) * s
      sum[i] = (sum[i] as number) + under * (1 - t) + over * t
    }
  }
}

/** Soft cloud over a tile, 0..1, from `across` by `up` cells and `octaves` finer ones. */
export function cloudTile(across: number, up: number, octaves: number, seed: number): Float32Array {
  const sum = new Float32Array(tileSize * tileSize)
  const whole = 2 - 0.5 ** (octaves - 1)
  for (let n = 0; n < octaves; n++) addOctave(sum, across * 2 ** n, up * 2 ** n, 0.5 ** n / whole, seed + n)
  return sum
}

/** Stones over a tile: distance to the nearest one's middle and to the joint between two, in cells, and the stone's own number 0..1. */
export type Stones = Readonly<{ middle: Float32Array; joint: Float32Array; own: Float32Array }>

/** Stones in `cells` by `cells` cells, one a cell; they repeat without a seam. */
export function stoneTile(cells: number, seed: number): Stones {
  const stones = { middle: new Float32Array(tileSize ** 2), joint: new Float32Array(tileSize ** 2), own: new Float32Array(tileSize ** 2) }
  const near = new Float64Array(27)
  const perPixel = cells / tileSize
  for (let cy = 0; cy < cells; cy++)
    for (let cx = 0; cx < cells; cx++) {
      for (let k = 0; k < 9; k++) {
        const [x, y] = [cx + (k % 3) - 1, cy + Math.floor(k / 3) - 1]
        const [wx, wy] = [(x + cells) % cells, (y + cells) % cells]
        near[3 * k] = x + 0.12 + 0.76 * chanceAt(wx, wy, seed)
        near[3 * k + 1] = y + 0.12 + 0.76 * chanceAt(wx, wy, seed + 1)
        near[3 * k + 2] = chanceAt(wx, wy, seed + 2)
      }
      for (let py = Math.ceil(cy / perPixel); py * perPixel < cy + 1; py++)
        for (let px = Math.ceil(cx / perPixel); px * perPixel < cx + 1; px++) {
          let first = 9
          let second = 9
          let own = 0
          for (let k = 0; k < 27; k += 3) {
            const dx = (near[k] as number) - px * perPixel
            const dy = (near[k + 1] as number) - py * perPixel
            const d = dx * dx + dy * dy
            if (d < first) {
              second = first
              first = d
              own = near[k + 2] as number
            } else if (d < second) second = d
          }
          const i = py * tileSize + px
          stones.middle[i] = Math.sqrt(first)
          stones.joint[i] = Math.sqrt(second) - Math.sqrt(first)
          stones.own[i] = own
        }
    }
  return stones
}
