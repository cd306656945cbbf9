import type { PierFrame } from '../pierFrame.ts'
import type { Properties } from '../properties.ts'
import { barShearHolds } from './barShear.ts'
import { blockOfPiersHold } from './blockOfPiers.ts'
import { clayAdhesionHold } from './clayAdhesion.ts'
import { concreteHolds } from './concrete.ts'
import { connectionHolds } from './connection.ts'
import { byUserHold, lowerBoundHold } from './frictionAndWeight.ts'
import { byDepthHold, rationalHold } from './fromBlowCount.ts'
import type { Hold } from './hold.ts'
import { breakoutOfLedgeHold, coneOverLedgeHold } from './overLedge.ts'
import { hangingWeight } from './pierWeight.ts'
import { postHolds } from './post.ts'
import { soilSite } from './soilContext.ts'

/** Every soil mechanism that could be in use, as bare numbers, in the order of their checks. */
const mechanisms = [
  lowerBoundHold,
  rationalHold,
  byDepthHold,
  clayAdhesionHold,
  byUserHold,
  coneOverLedgeHold,
  breakoutOfLedgeHold,
  blockOfPiersHold,
]

/**
 * Every link of the chain as a bare number: what the checks of the same pier state, without zones and without work shown, for a study
 * that asks thousands of times.
 */
export function upliftHolds(frame: PierFrame, properties: Properties): Hold[] {
  const figures = { ...soilSite(frame, properties), weight: hangingWeight(frame, properties) }
  const soil = mechanisms.map((mechanism) => mechanism(figures)).filter((one) => one !== null)
  return [...postHolds(frame), ...connectionHolds(frame, properties), ...barShearHolds(frame), ...concreteHolds(frame), ...soil]
}
