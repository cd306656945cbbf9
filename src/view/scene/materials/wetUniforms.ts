import { DataTexture, LinearFilter, RedFormat, Vector2, Vector3, Vector4 } from 'three'
import { mostBands } from './wetGlsl.ts'

/** Cells of a dry pour: from the uphill wall over the post to the downhill wall, and from the top down. */
export const scatterRaster = { columns: 48, rows: 48 } as const

/** Values of wet wood and of a dry pour that every solid material reads; changed in place, never replaced. */
export type WetUniforms = Readonly<ReturnType<typeof createWetUniforms>>

export function createWetUniforms() {
  const { columns, rows } = scatterRaster
  const scatter = new DataTexture(new Uint8Array(columns * rows), columns, rows, RedFormat)
  scatter.minFilter = scatter.magFilter = LinearFilter
  scatter.needsUpdate = true
  return {
    /** 1 while the layer is on. */
    uWet: { value: 0 },
    /** 1 while the layer is on and there is a dry pour to show. */
    uWetPour: { value: 0 },
    /** Of such posts, the most and the least share that is no longer sound at the year on show; nought while no year is. */
    uGone: { value: new Vector2() },
    /** Where decay is found: bottom and top [m] at the uphill face, the axis and the downhill face. */
    uZoneFrom: { value: new Vector3() },
    uZoneTo: { value: new Vector3() },
    uWetCount: { value: 0 },
    /** Top of each band [m] at the uphill face, the axis and the downhill face; class, and half more where water meets air. Top down. */
    uWetTo: { value: Array.from({ length: mostBands }, () => new Vector4()) },
    /** Plan direction straight downhill (x, z), and one over half the post along it [1/m]. */
    uWetSide: { value: new Vector4(1, 0, 1, 0) },
    /** Of a leaning post: how far it has come over at grade, downhill [m], and how much farther with each metre up. */
    uWetLean: { value: new Vector2() },
    /** Of the dry pour: post, wall, top and bottom [m]. */
    uPour: { value: new Vector4(0, 1, 1, 0) },
    uScatter: { value: scatter },
  }
}
