import type { PierResult } from '../model/result.ts'
import type { PierSpec } from '../model/spec.ts'
import { depths } from './depths.ts'
import { frameOf, type PierFrame } from './pierFrame.ts'
import { pierSheets, pierZones } from './pierZones.ts'
import { holeAndSpoil, quantities } from './quantities.ts'

/** What stands where, how much of it there is and what to buy: no load, no check. */
export type TakeOff = Readonly<{ frame: PierFrame }> & Pick<PierResult, 'zones' | 'sheets' | 'depths' | 'hole' | 'quantities'>

/**
 * The take-off of a pier by itself, as a schedule of many piers needs it. Pure.
 * @param spec a valid spec
 */
export function takeOff(spec: PierSpec): TakeOff {
  const frame = frameOf(spec)
  const zones = pierZones(frame)
  return {
    frame,
    zones,
    sheets: pierSheets(frame),
    depths: depths(frame),
    hole: holeAndSpoil(frame, zones),
    quantities: quantities(frame, zones),
  }
}
