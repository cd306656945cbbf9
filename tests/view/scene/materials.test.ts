import { describe, expect, it } from 'vitest'
import { lightOf, mineralGrain, turfGrain, woodGrain } from '../../../src/view/scene/materials/bakedTiles.ts'
import { mineralLooks } from '../../../src/view/scene/materials/mineralLooks.ts'
import { PaperScale } from '../../../src/view/scene/materials/paperScale.ts'
import { cloudTile, stoneTile, tileSize } from '../../../src/view/scene/materials/tileNoise.ts'
import { dashes } from '../../../src/view/scene/pier/lines.ts'
import { hatches } from '../../../src/view/section/hatch.ts'
import { hatchTiles } from '../../../src/view/section/hatchTile.ts'
import { close } from '../../close.ts'

const tiles = {
  concrete: mineralGrain(mineralLooks.concrete),
  gravel: mineralGrain(mineralLooks.gravel),
  wood: woodGrain('#dfbe97', '#bb8d61'),
  turf: turfGrain(),
}

/** Largest step from a column to the next, and from a row to the next, near a line across the tile. */
const stepAt = (values: ArrayLike<number>, line: number, each = 1): number => {
  const wrap = (n: number) => (n + tileSize) % tileSize
  const at = (x: number, y: number) => values[(wrap(y) * tileSize + wrap(x)) * each] ?? 0
  let most = 0
  for (let i = 0; i < tileSize; i++) most = Math.max(most, Math.abs(at(line, i) - at(line - 1, i)), Math.abs(at(i, line) - at(i, line - 1)))
  return most
}

describe('[V7] the tiles that materials are made of', () => {
  it('are the same on every run', () => {
    expect(Buffer.from(tiles.gravel).equals(Buffer.from(mineralGrain(mineralLooks.gravel)))).toBe(true)
  })

  it('repeat without a seam: steps across the border are no larger than inside', () => {
    const inside = (values: ArrayLike<number>, each = 1) => Math.max(...[100, 171, 256, 300, 411].map((line) => stepAt(values, line, each)))
    const { middle, joint } = stoneTile(9, 5)
    for (const soft of [cloudTile(5, 7, 3, 2), middle, joint]) expect(stepAt(soft, 0)).toBeLessThanOrEqual(1.5 * inside(soft))
    for (const tile of Object.values(tiles)) expect(stepAt(tile, 0, 4)).toBeLessThanOrEqual(1.3 * inside(tile, 4))
  })

  it('hold colours round the one they are told, and relief', () => {
    const mean = [0, 0, 0]
    let [low, high] = [255, 0]
    for (let i = 0; i < tiles.concrete.length; i += 4) {
      for (let k = 0; k < 3; k++) mean[k] = (mean[k] ?? 0) + (tiles.concrete[i + k] ?? 0) / (tileSize * tileSize)
      low = Math.min(low, tiles.concrete[i + 3] ?? 0)
      high = Math.max(high, tiles.concrete[i + 3] ?? 0)
    }
    const told = [1, 3, 5].map((at) => Number.parseInt(mineralLooks.concrete.base.slice(at, at + 2), 16))
    told.forEach((value, k) => {
      expect(Math.abs((mean[k] ?? 0) - value)).toBeLessThan(16)
    })
    expect(high - low).toBeGreaterThan(20)
  })

  it('are reckoned in light, not in bytes', () => {
    // IEC 61966-2-1: byte 128 is 0.2159 in linear light.
    for (const light of lightOf('#808080')) close(light, 0.2159, { abs: 1e-4, rel: 0 })
  })
})

describe('[V8] marks on cut faces', () => {
  it('are drawn for every hatch there is, from the tile that is used on paper', () => {
    for (const name of hatches) if (name !== 'none') expect(hatchTiles[name].strokes + hatchTiles[name].dots).toMatch(/^M/)
  })

  it('keep their size in the ground while the eye moves a little, and change by a factor of two when it moves a lot', () => {
    const ladder = new PaperScale()
    const read = { now: 0, next: 0, share: 0, set: (x: number, y: number, z: number) => Object.assign(read, { now: x, next: y, share: z }) }
    ladder.update(0.001, 0, read)
    const first = read.now
    for (const nearer of [1.1, 0.9, 1.3]) {
      ladder.update(0.001 * nearer, 1000, read)
      expect([read.now, read.share]).toEqual([first, 0])
    }
    expect(ladder.update(0.0021, 2000, read)).toBe(true)
    expect(ladder.update(0.0021, 2075, read)).toBe(true)
    close(read.share, 0.5, { abs: 1e-9, rel: 0 })
    expect(ladder.update(0.0021, 2300, read)).toBe(false)
    expect(read.now).toBe(first * 2)
  })
})

describe('[V9] dashed lines', () => {
  it('start and end with the line, at the gap asked for or close to it', () => {
    const made = dashes(Float32Array.of(0, 0, 0, 1, 0, 0), 0.08, 0.04)
    close(made[0] ?? Number.NaN, 0, { abs: 1e-6, rel: 0 })
    close(made[made.length - 3] ?? Number.NaN, 1, { abs: 1e-6, rel: 0 })
    for (let i = 6; i < made.length; i += 6) close((made[i] ?? 0) - (made[i - 3] ?? 0), 0.04, { abs: 1e-6, rel: 0 })
  })

  it('leave nothing where a line has no length', () => {
    expect(dashes(Float32Array.of(1, 1, 1, 1, 1, 1), 0.08, 0.04)).toHaveLength(0)
  })
})
