import { Color, Vector2, Vector3 } from 'three'
import { createWetUniforms } from './wetUniforms.ts'

/** Values that every solid material reads; changed in place, never replaced. */
export type SharedUniforms = Readonly<ReturnType<typeof createSharedUniforms>>

/** Stands for the height of a water table that is not there or not shown [m]. */
export const noWater = -1e4

/** Shade in the corner of a cut that is open by so much [rad]: none once its faces are flush. For the eye, no measure. */
export const cornerShade = (open: number): number => 0.3 * Math.max(0, 1 - open / Math.PI)

export const createSharedUniforms = () => ({
  /** How much darker it is in the corner where the faces of the cut meet, 0..1. */
  uCorner: { value: 0 },
  /** Metres to a paper millimetre: now, next, and how far the change has gone. */
  uPaperScale: { value: new Vector3(0.004, 0.004, 0) },
  /** Plan direction to the reader's right, so that marks run on across the axis. */
  uRight: { value: new Vector2(1, 0) },
  uAccent: { value: new Color('#7a1f5c') },
  /** What sets in the ground: 0 hard and dry … 1 just placed. */
  uFresh: { value: 0 },
  ...createWetUniforms(),
})
