import type { Weathering } from '../../model/spec.ts'
import type { FreezeThaw } from '../tables/concrete.ts'

type Inputs = Readonly<{ weathering: Weathering; inFrozenGround: boolean; inOpen: boolean; holdsWater: boolean }>

/**
 * Freeze-thaw class of a pier, read off where it stands. The code describes its classes in words; this is our reading of them.
 * @param weathering potential of the place, IRC: negligible, moderate or severe [1]
 * @param inFrozenGround true when its concrete comes up into ground that freezes [1]
 * @param inOpen true when its concrete comes up to or above the ground [1]
 * @param holdsWater true when the top is flat, dished or covered, so that water stays on it [1]
 * @returns F0, F1 or F2 [1]; F3, with salt against ice, can't be read off a pier
 * Formula: F0 where nothing of it freezes; F2 where wet soil or standing water freezes against it; else F1
 * Valid: a reading. Outside: salt on or in the ground, or sulfate, is not looked at; their classes need a test of soil and water.
 * Source: aci-318-19-19-3, assumption
 * Checked by: tests/core/derive/freezeThaw.test.ts
 */
export function freezeThawClass({ weathering, inFrozenGround, inOpen, holdsWater }: Inputs): Exclude<FreezeThaw, 'F3'> {
  if (weathering === 'negligible' || !(inFrozenGround || inOpen)) return 'F0'
  return inFrozenGround || holdsWater ? 'F2' : 'F1'
}
