import type { QuantityLine } from '../../model/result.ts'
import type { Check } from '../../model/worked.ts'
import type { PierFrame } from '../pierFrame.ts'
import { clayAdhesion } from './clayAdhesion.ts'
import { byUser, lowerBound, upperBound } from './frictionAndWeight.ts'
import { breakoutOfLedge, coneOverLedge } from './overLedge.ts'
import { soilContext } from './soilContext.ts'

/** Every way in which the ground may hold the pier down, each on its own: never two that use the same soil. */
const mechanisms = [lowerBound, clayAdhesion, byUser, coneOverLedge, breakoutOfLedge, upperBound]

export function upliftBySoil(frame: PierFrame, lines: readonly QuantityLine[]): Check[] {
  const context = soilContext(frame, lines)
  return mechanisms.map((mechanism) => mechanism(context)).filter((check) => check !== null)
}
