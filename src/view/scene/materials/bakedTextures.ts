import { CanvasTexture, DataTexture, LinearMipmapLinearFilter, RepeatWrapping, SRGBColorSpace, type Texture } from 'three'
import type { Hatch } from '../../section/hatch.ts'
import { hatchTiles } from '../../section/hatchTile.ts'
import { cloudGrain, mineralGrain, type Tile, turfGrain, woodGrain } from './bakedTiles.ts'
import type { MineralLook } from './mineralLooks.ts'
import { tileSize } from './tileNoise.ts'

const repeating = <T extends Texture>(texture: T): T => {
  texture.wrapS = texture.wrapT = RepeatWrapping
  texture.minFilter = LinearMipmapLinearFilter
  texture.generateMipmaps = true
  texture.anisotropy = 4
  texture.needsUpdate = true
  return texture
}

const ofTile = (tile: Tile, isColour: boolean): DataTexture => {
  const texture = repeating(new DataTexture(tile, tileSize, tileSize))
  if (isColour) texture.colorSpace = SRGBColorSpace
  return texture
}

/** Pixels to a paper millimetre in a texture of marks, for the tile edge nearest to a power of two. */
const marksPerMillimetre = 22

/** Marks of a hatch in the red channel, drawn from the same tile as on paper. */
function drawMarks(hatch: Exclude<Hatch, 'none'>): CanvasTexture {
  const { width, height, strokes, dots } = hatchTiles[hatch]
  const canvas = document.createElement('canvas')
  const pixels = (millimetres: number): number => 2 ** Math.round(Math.log2(millimetres * marksPerMillimetre))
  canvas.width = pixels(width)
  canvas.height = pixels(height)
  const pen = canvas.getContext('2d')
  if (!pen) throw new Error('drawMarks: no canvas to draw on')
  pen.fillRect(0, 0, canvas.width, canvas.height)
  pen.strokeStyle = pen.fillStyle = '#fff'
  pen.lineWidth = 0.2
  pen.lineCap = pen.lineJoin = 'round'
  const [lines, shapes] = [new Path2D(strokes), new Path2D(dots)]
  // What reaches over an edge comes in again at the other.
  for (const i of [-1, 0, 1])
    for (const j of [-1, 0, 1]) {
      pen.setTransform(canvas.width / width, 0, 0, canvas.height / height, i * canvas.width, j * canvas.height)
      pen.stroke(lines)
      pen.fill(shapes)
    }
  return repeating(new CanvasTexture(canvas))
}

const made = new Map<string, Texture>()

/**
 * A texture for whoever asks, to be disposed of by them; what it shows is made once for the page, and a renderer keeps one copy of it
 * for all who share it.
 */
function own(key: string, make: () => Texture): Texture {
  const first = made.get(key) ?? make()
  made.set(key, first)
  return first.clone()
}

export const mineralTexture = (look: MineralLook): Texture => own(JSON.stringify(look), () => ofTile(mineralGrain(look), true))
export const woodTexture = (early: string, late: string): Texture => own(early + late, () => ofTile(woodGrain(early, late), true))
export const turfTexture = (): Texture => own('turf', () => ofTile(turfGrain(), true))
export const cloudTexture = (): Texture => own('cloud', () => ofTile(cloudGrain(), false))
export const marksTexture = (hatch: Exclude<Hatch, 'none'>): Texture => own(`marks ${hatch}`, () => drawMarks(hatch))
