import { describe, expect, it } from 'vitest'
import { hatchGlsl } from '../../../src/view/scene/materials/hatchGlsl.ts'
import { PaperScale } from '../../../src/view/scene/materials/paperScale.ts'
import { noiseSize, solidNoise } from '../../../src/view/scene/materials/solidNoise.ts'
import { dashes } from '../../../src/view/scene/pier/lines.ts'
import { hatches } from '../../../src/view/section/hatch.ts'
import { close } from '../../close.ts'

describe('[V7] the noise that materials are made of', () => {
  const noise = solidNoise()
  const at = (x: number, y: number, z: number, channel: number): number => {
    const wrap = (n: number) => ((n % noiseSize) + noiseSize) % noiseSize
    return noise[((wrap(z) * noiseSize + wrap(y)) * noiseSize + wrap(x)) * 4 + channel] ?? 0
  }

  it('is the same on every run', () => {
    expect(Buffer.from(noise).equals(Buffer.from(solidNoise()))).toBe(true)
  })

  it('repeats without a seam: steps across the border are no larger than inside', () => {
    let inside = 0
    let border = 0
    for (let i = 0; i < noiseSize; i++)
      for (let j = 0; j < noiseSize; j++) {
        border = Math.max(border, Math.abs(at(-1, i, j, 0) - at(0, i, j, 0)))
        inside = Math.max(inside, Math.abs(at(31, i, j, 0) - at(32, i, j, 0)))
      }
    expect(border).toBeLessThanOrEqual(inside * 1.3)
  })

  it('uses its range', () => {
    for (const channel of [0, 1, 2, 3]) {
      let low = 255
      let high = 0
      for (let i = channel; i < noise.length; i += 4) {
        low = Math.min(low, noise[i] ?? 0)
        high = Math.max(high, noise[i] ?? 0)
      }
      expect(high - low).toBeGreaterThan(150)
    }
  })
})

describe('[V8] marks on cut faces', () => {
  it('are drawn for every hatch there is', () => {
    for (const name of hatches) {
      const constant = `HATCH_${name.replace('-', '_').toUpperCase()}`
      expect(hatchGlsl).toContain(`#define ${constant} `)
      if (name !== 'none') expect(hatchGlsl).toContain(`kind == ${constant})`)
    }
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
