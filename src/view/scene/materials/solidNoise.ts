/** Edge of the noise cube in voxels, and cells of the stone lattice along it. */
export const noiseSize = 64
const cells = 8
const octavePeriods = [4, 8, 16, 32] as const

/** Whole-number hash to 0..1, the same on every machine. */
const hash = (x: number, y: number, z: number, seed: number): number => {
  let h = Math.imul(x, 0x27d4eb2d) ^ Math.imul(y, 0x165667b1) ^ Math.imul(z, 0x9e3779b1) ^ Math.imul(seed, 0x85ebca6b)
  h = Math.imul(h ^ (h >>> 15), 0x2c1b3c6d)
  h = Math.imul(h ^ (h >>> 12), 0x297a2d39)
  return ((h ^ (h >>> 15)) >>> 0) / 4294967296
}

const ease = (t: number): number => t * t * (3 - 2 * t)

/** Lattice values of one octave, [period^3], so that the voxel loop only looks up. */
const lattice = (period: number, seed: number): Float32Array => {
  const values = new Float32Array(period ** 3)
  for (let z = 0; z < period; z++)
    for (let y = 0; y < period; y++) for (let x = 0; x < period; x++) values[(z * period + y) * period + x] = hash(x, y, z, seed)
  return values
}

/** Adds one octave of tileable value noise to `sum`, [size^3], weighted. */
const addOctave = (sum: Float32Array, period: number, weight: number, seed: number): void => {
  const values = lattice(period, seed)
  const step = period / noiseSize
  for (let z = 0, i = 0; z < noiseSize; z++) {
    const fz = z * step
    const z0 = Math.floor(fz)
    const tz = ease(fz - z0)
    for (let y = 0; y < noiseSize; y++) {
      const fy = y * step
      const y0 = Math.floor(fy)
      const ty = ease(fy - y0)
      const row = (z0 * period + y0) * period
      const rowUp = (z0 * period + ((y0 + 1) % period)) * period
      const rowFar = (((z0 + 1) % period) * period + y0) * period
      const rowFarUp = (((z0 + 1) % period) * period + ((y0 + 1) % period)) * period
      for (let x = 0; x < noiseSize; x++, i++) {
        const fx = x * step
        const x0 = Math.floor(fx)
        const x1 = (x0 + 1) % period
        const tx = ease(fx - x0)
        const near = (values[row + x0] as number) * (1 - tx) + (values[row + x1] as number) * tx
        const up = (values[rowUp + x0] as number) * (1 - tx) + (values[rowUp + x1] as number) * tx
        const far = (values[rowFar + x0] as number) * (1 - tx) + (values[rowFar + x1] as number) * tx
        const farUp = (values[rowFarUp + x0] as number) * (1 - tx) + (values[rowFarUp + x1] as number) * tx
        sum[i] = (sum[i] as number) + weight * ((near * (1 - ty) + up * ty) * (1 - tz) + (far * (1 - ty) + farUp * ty) * tz)
      }
    }
  }
}

/** The stones of a cell and of its 26 neighbours into `near`, [27][4]: place in cells, and the stone's own number. */
const gather = (points: Float32Array, cx: number, cy: number, cz: number, near: Float64Array): void => {
  for (let dz = -1, k = 0; dz <= 1; dz++)
    for (let dy = -1; dy <= 1; dy++)
      for (let dx = -1; dx <= 1; dx++, k += 4) {
        const j = ((((cz + dz + cells) % cells) * cells + ((cy + dy + cells) % cells)) * cells + ((cx + dx + cells) % cells)) * 4
        near[k] = cx + dx + (points[j] as number)
        near[k + 1] = cy + dy + (points[j + 1] as number)
        near[k + 2] = cz + dz + (points[j + 2] as number)
        near[k + 3] = points[j + 3] as number
      }
}

/**
 * A cube of noise that repeats without a seam, [64^3][4] bytes: soft cloud, distance to the nearest stone's middle,
 * that stone's own number, and distance to the joint between stones (both distances in lattice cells).
 */
export function solidNoise(): Uint8Array {
  const texels = new Uint8Array(noiseSize ** 3 * 4)
  const cloud = new Float32Array(noiseSize ** 3)
  octavePeriods.forEach((period, n) => {
    addOctave(cloud, period, 0.5 ** n, n)
  })
  const points = new Float32Array(cells ** 3 * 4)
  for (let z = 0, i = 0; z < cells; z++)
    for (let y = 0; y < cells; y++)
      for (let x = 0; x < cells; x++, i += 4) {
        for (let k = 0; k < 3; k++) points[i + k] = 0.12 + 0.76 * hash(x, y, z, 11 + k)
        points[i + 3] = hash(x, y, z, 17)
      }
  const perCell = noiseSize / cells
  // All voxels of a cell look at the same 27 stones.
  const near = new Float64Array(27 * 4)
  for (let cz = 0; cz < cells; cz++)
    for (let cy = 0; cy < cells; cy++)
      for (let cx = 0; cx < cells; cx++) {
        gather(points, cx, cy, cz, near)
        for (let z = cz * perCell; z < (cz + 1) * perCell; z++)
          for (let y = cy * perCell; y < (cy + 1) * perCell; y++)
            for (let x = cx * perCell, i = (z * noiseSize + y) * noiseSize + x; x < (cx + 1) * perCell; x++, i++) {
              const px = x / perCell
              const py = y / perCell
              const pz = z / perCell
              let first = 9
              let second = 9
              let own = 0
              for (let j = 0; j < near.length; j += 4) {
                const ex = (near[j] as number) - px
                const ey = (near[j + 1] as number) - py
                const ez = (near[j + 2] as number) - pz
                const d = ex * ex + ey * ey + ez * ez
                if (d < first) {
                  second = first
                  first = d
                  own = near[j + 3] as number
                } else if (d < second) second = d
              }
              const f1 = Math.sqrt(first)
              texels[i * 4] = Math.min(255, ((cloud[i] as number) / 1.875) * 255)
              texels[i * 4 + 1] = Math.min(255, f1 * 200)
              texels[i * 4 + 2] = own * 255
              texels[i * 4 + 3] = Math.min(255, (Math.sqrt(second) - f1) * 255)
            }
      }
  return texels
}
