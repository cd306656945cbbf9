import { dryPourScatter, type ScatterClass } from '../../engineering/mix/dryPourScatter.ts'
import type { PierSpec } from '../../model/spec.ts'
import { frameOf } from '../pierFrame.ts'
import { dryMix } from './dryMix.ts'

/**
 * One way in which a dry pour may have turned out: a picture, and no number comes of it. Top and bottom of the mix on the axis [m];
 * `classAt` takes the share of the way from post to wall and from the top down [1].
 */
export type DryPourPicture = Readonly<{
  from: number
  to: number
  /** Shares of its height that are wetted at least and at most. */
  wetted: Readonly<{ shortest: number; longest: number }>
  classAt: (across: number, down: number) => ScatterClass
}>

/** Null where no mix was placed dry. Where nobody pours water it may have drawn some from the ground, or none: both ends are open. */
export function dryPourPicture(spec: PierSpec): DryPourPicture | null {
  const mix = dryMix(frameOf(spec))
  if (mix === null) return null
  const { wetting, height, from, to } = mix
  const wetted = wetting
    ? { shortest: wetting.shortest.value / height, longest: wetting.longest.value / height }
    : { shortest: 0, longest: 1 }
  return { from, to, wetted, classAt: dryPourScatter({ seed: spec.placing.pattern, wetted }) }
}
