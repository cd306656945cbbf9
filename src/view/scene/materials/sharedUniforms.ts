import { Color, Data3DTexture, LinearFilter, LinearMipmapLinearFilter, RepeatWrapping, RGBAFormat, Vector2, Vector3, Vector4 } from 'three'
import { noiseSize, solidNoise } from './solidNoise.ts'
import { createWetUniforms, type WetUniforms } from './wetUniforms.ts'

/** Values that every solid material reads; changed in place, never replaced. */
export type SharedUniforms = Readonly<{
  uNoise: { value: Data3DTexture }
  /** Metres to a paper millimetre: now, next, and how far the change has gone. */
  uPaperScale: { value: Vector3 }
  /** Plan direction to the reader's right, so that marks run on across the axis. */
  uRight: { value: Vector2 }
  uAccent: { value: Color }
  /** Grade: height on the axis, slope along x and along z. */
  uGround: { value: Vector4 }
  /** Height of the water table [m]; far below when there is none. */
  uWater: { value: number }
  /** What sets in the ground: 0 hard and dry … 1 just placed. */
  uFresh: { value: number }
}> &
  WetUniforms

export const noWater = -1e4

/** The same for every picture of the page, so it is worked out once. */
let texels: ReturnType<typeof solidNoise> | null = null

/** The noise that all solid materials read; whoever makes it disposes of it. */
export const noiseTexture = (): Data3DTexture => {
  texels ??= solidNoise()
  const texture = new Data3DTexture(texels, noiseSize, noiseSize, noiseSize)
  texture.format = RGBAFormat
  texture.wrapS = texture.wrapT = texture.wrapR = RepeatWrapping
  texture.minFilter = LinearMipmapLinearFilter
  texture.magFilter = LinearFilter
  texture.generateMipmaps = true
  texture.unpackAlignment = 1
  texture.needsUpdate = true
  return texture
}

/** `noise`: one that is shared with others; left out, one of its own. */
export const createSharedUniforms = (noise: Data3DTexture = noiseTexture()): SharedUniforms => ({
  uNoise: { value: noise },
  uPaperScale: { value: new Vector3(0.004, 0.004, 0) },
  uRight: { value: new Vector2(1, 0) },
  uAccent: { value: new Color('#7a1f5c') },
  uGround: { value: new Vector4(0, 0, 0, 0) },
  uWater: { value: noWater },
  uFresh: { value: 0 },
  ...createWetUniforms(),
})
