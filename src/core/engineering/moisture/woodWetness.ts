import type { Standing } from '../../model/worked.ts'
import type { SourceId } from '../sources.ts'
import { contactWetness, type Oxygen, type WoodTouch, type WoodWetness, woodWetnesses } from '../tables/contactWetness.ts'
import type { SoilWetness } from './soilWetness.ts'

type Inputs = Readonly<{
  touch: WoodTouch
  ground: SoilWetness
  /** Does the top of the pier send water to the post? */
  fed: boolean
}>
export type WoodWetnessVerdict = Readonly<{
  wetness: WoodWetness
  oxygen: Oxygen
  /** Wet, and with air: where decay may sit. Under water there is no air. */
  waterAndAir: boolean
  reason: string
  sources: readonly SourceId[]
  standing: Standing
}>

/**
 * Wetness class of wood by what touches it, read from the contact table.
 * @param touch what the wood touches, or the place [1]
 * @param ground wetness class of the ground there [1]
 * @param fed true where the top of the pier sends water to the post [1]
 * @returns class, air, reason and standing [1]
 * Formula: the table's cell; where water is fed, the wetter of it and the row's fed class
 * Valid: a screening class for comparing methods. Outside: no moisture content and no life follows from it.
 * Source: assumption
 * Checked by: tests/core/engineering/moisture/woodWetness.test.ts
 */
export function woodWetness({ touch, ground, fed }: Inputs): WoodWetnessVerdict {
  const row = contactWetness[touch]
  const plain = row.wetness[ground]
  const wetness = fed && row.fed !== undefined ? wetter(plain, row.fed) : plain
  return {
    wetness,
    oxygen: row.oxygen,
    waterAndAir: wetness !== 'dries-out' && row.oxygen !== 'little',
    reason: row.reason,
    sources: row.sources,
    standing: row.standing,
  }
}

/** The wetter of two classes. */
export const wetter = (a: WoodWetness, b: WoodWetness): WoodWetness => (woodWetnesses.indexOf(a) >= woodWetnesses.indexOf(b) ? a : b)
