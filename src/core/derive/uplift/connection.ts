import type { Check } from '../../model/worked.ts'
import type { PierFrame } from '../pierFrame.ts'
import { type Properties, tableProperties } from '../properties.ts'
import { barThroughPost, barThroughPostHold } from './barThroughPost.ts'
import { bracketBolts, bracketBoltsHold } from './bracketBolts.ts'
import { bracketLegs, bracketLegsHold } from './bracketLegs.ts'
import type { Hold } from './hold.ts'

/** The links between post and concrete: bars through the post; or the bolts of a bracket, and its legs in the concrete. */
export function upliftByConnection(frame: PierFrame, properties: Properties = tableProperties(frame.spec)): Check[] {
  if (frame.spec.support.kind !== 'bracket') return [barThroughPost(frame, properties)]
  return [bracketBolts(frame, properties), bracketLegs(frame)].filter((check) => check !== null)
}

/** The same as bare numbers. */
export function connectionHolds(frame: PierFrame, properties: Properties): Hold[] {
  if (frame.spec.support.kind !== 'bracket') return [barThroughPostHold(frame, properties)]
  return [bracketBoltsHold(frame, properties), bracketLegsHold(frame)].filter((one) => one !== null)
}
