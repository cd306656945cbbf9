import type { MineralLook } from './mineralLooks.ts'
import { chanceAt, cloudTile, step, stoneTile, tileSize } from './tileNoise.ts'

/** Bytes of a tile that repeats without a seam, [512][512][4], bottom row first: sRGB colour, and relief 0..255. */
export type Tile = Uint8Array

/** Edge of a mineral's tile [m]. */
export const mineralTile = 0.8
/** Of a wood tile: across the year rings, and along the grain [m]. */
export const woodTile = { across: 0.25, along: 1.3 } as const
/** Edge of a tile of turf [m]. */
export const turfTile = 1.1
/** Height that relief 255 stands for [m]. */
export const mostRelief = 0.02

type Tone = readonly [number, number, number]

/** Linear light to a byte of sRGB (IEC 61966-2-1). */
const encoded = Uint8Array.from({ length: 4097 }, (_, k) => {
  const light = k / 4096
  return Math.round(255 * (light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055))
})
const byte = (light: number): number => encoded[Math.round(4096 * Math.min(1, Math.max(0, light)))] as number

/** A colour of a style sheet in linear light. */
export const lightOf = (hex: string): Tone =>
  [1, 3, 5].map((at) => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4
  }) as unknown as Tone

const mix = (a: number, b: number, share: number): number => a + (b - a) * share
const fraction = (value: number): number => value - Math.floor(value)

/** Grain, stones and relief of a crumbly or cast material. */
export function mineralGrain({ base, mottle, stoneA, stoneB, scale, mix: shares, packed, bump }: MineralLook): Tile {
  const [cloudScale, grainScale, coarseScale, fineScale] = scale
  const [mottled, contrast, coarseShare, fineShare] = shares
  const cells = (perMetre: number, each: number): number => Math.max(1, Math.round(perMetre * mineralTile * each))
  const cloud = cloudTile(cells(cloudScale, 4), cells(cloudScale, 4), 4, 3)
  const grain = cloudTile(cells(grainScale, 4), cells(grainScale, 4), 3, 21)
  const crumb = cloudTile(cells(grainScale * 0.43, 4), cells(grainScale * 0.43, 4), 3, 41)
  const coarse = stoneTile(cells(coarseScale, 8), 61)
  const fine = stoneTile(cells(fineScale, 8), 71)
  const channels = [0, 1, 2].map((k) => [base, mottle, stoneA, stoneB].map((hex) => lightOf(hex)[k] as number))
  const tile = new Uint8Array(tileSize * tileSize * 4)
  for (let i = 0; i < tileSize * tileSize; i++) {
    const soft = cloud[i] as number
    const rough = grain[i] as number
    const own = coarse.own[i] as number
    const fineOwn = fine.own[i] as number
    const joint = coarse.joint[i] as number
    const middle = coarse.middle[i] as number
    const girth = 0.33 + 0.25 * fraction(own * 13.7)
    const round = step(girth + 0.06, girth - 0.04, middle + 0.5 * (rough - 0.5)) * step(0.02, 0.08, joint)
    const fitted = step(0.05, 0.15, joint + 0.1 * (rough - 0.5))
    const isCoarse = own < coarseShare ? mix(round, fitted, packed) : 0
    const fineMiddle = fine.middle[i] as number
    const isFine = fraction(fineOwn * 7.3) < fineShare ? step(0.5, 0.38, fineMiddle) * step(0.02, 0.08, fine.joint[i] as number) : 0
    const speck = fraction(fineOwn * 31.7) > 0.86 ? step(0.33, 0.2, fineMiddle) : 0
    const crumbly = crumb[i] as number
    const shade =
      (1 + contrast * (1.3 * (rough - 0.5) + 0.9 * (crumbly - 0.5))) * (1 - 0.5 * contrast * speck) * (1 - 0.5 * packed * (1 - fitted))
    const isMottled = mottled * step(0.36, 0.66, soft + 0.22 * (rough - 0.5))
    const fineTone = fraction(fineOwn * 5.7)
    const coarseTone = fraction(own * 7.31)
    for (let k = 0; k < 3; k++) {
      const tones = channels[k] as number[]
      const a = tones[2] as number
      const b = tones[3] as number
      let light = mix(tones[0] as number, tones[1] as number, isMottled) * shade
      light = mix(light, mix(b, a, fineTone) * (0.9 + 0.2 * rough), 0.8 * isFine)
      light = mix(light, mix(b, a, coarseTone) * (0.86 + 0.28 * soft), isCoarse)
      tile[4 * i + k] = byte(light)
    }
    const dome = isCoarse * Math.max(0, 1 - 1.3 * middle)
    const height = 0.0022 * rough + 0.0026 * crumbly + (0.0156 * dome + 0.0052 * isCoarse) / coarseScale + (0.0078 * isFine) / fineScale
    tile[4 * i + 3] = Math.min(255, ((height * bump) / mostRelief) * 255)
  }
  return tile
}

/** Year rings across, fibre along: `early` and `late` wood as style sheets write colours. */
export function woodGrain(early: string, late: string): Tile {
  const years = 32
  const fibre = cloudTile(96, 6, 3, 5)
  const streak = cloudTile(14, 3, 3, 15)
  const wave = cloudTile(8, 5, 2, 25)
  const tones = { early: lightOf(early), late: lightOf(late) }
  const tile = new Uint8Array(tileSize * tileSize * 4)
  for (let y = 0, i = 0; y < tileSize; y++)
    for (let x = 0; x < tileSize; x++, i++) {
      const ring = (x / tileSize) * years + 0.9 * ((wave[i] as number) - 0.5)
      const year = (Math.floor(ring) + years) % years
      const season = fraction(ring)
      const isLate = step(0.35, 0.86, season) * (1 - step(0.93, 1, season)) * (0.5 + 0.5 * chanceAt(year, 0, 78))
      const [f, s] = [fibre[i] as number, streak[i] as number]
      const check = step(0.7, 0.76, s) * step(0.55, 0.7, f)
      const shade = (0.87 + 0.26 * f) * (0.9 + 0.2 * s) * (1 - 0.4 * check)
      for (let k = 0; k < 3; k++) tile[4 * i + k] = byte(mix(tones.early[k] as number, tones.late[k] as number, 0.85 * isLate) * shade)
      tile[4 * i + 3] = Math.min(255, Math.max(0, ((0.004 + 0.0016 * f + 0.0009 * isLate - 0.004 * check) / mostRelief) * 255))
    }
  return tile
}

/** Mown grass from above. */
export function turfGrain(): Tile {
  const broad = cloudTile(3, 3, 4, 7)
  const tufts = cloudTile(14, 14, 3, 17)
  const blades = cloudTile(56, 20, 3, 27)
  const dry = cloudTile(4, 4, 3, 37)
  const tones: readonly Tone[] = [
    [0.075, 0.135, 0.024],
    [0.16, 0.225, 0.05],
    [0.27, 0.29, 0.105],
  ]
  const tile = new Uint8Array(tileSize * tileSize * 4)
  for (let i = 0; i < tileSize * tileSize; i++) {
    const light = step(0.3, 0.7, 0.55 * (broad[i] as number) + 0.45 * (tufts[i] as number))
    const straw = 0.4 * step(0.56, 0.74, dry[i] as number)
    const shade = 0.55 + 0.9 * (blades[i] as number)
    for (let k = 0; k < 3; k++)
      tile[4 * i + k] = byte(mix(mix(tones[0]?.[k] as number, tones[1]?.[k] as number, light), tones[2]?.[k] as number, straw) * shade)
    tile[4 * i + 3] = ((0.012 * (blades[i] as number)) / mostRelief) * 255
  }
  return tile
}

/** Two soft clouds and two finer ones, a channel each: what varies over more than a tile. */
export function cloudGrain(): Tile {
  const clouds = [cloudTile(4, 4, 4, 1), cloudTile(5, 5, 4, 11), cloudTile(16, 16, 2, 31), cloudTile(40, 40, 2, 51)]
  return Uint8Array.from({ length: tileSize * tileSize * 4 }, (_, k) => Math.round(255 * (clouds[k % 4]?.[k >> 2] ?? 0)))
}
