import type { Check } from '../../model/worked.ts'
import type { PierFrame } from '../pierFrame.ts'
import { type Properties, tableProperties } from '../properties.ts'
import { barThroughPost, barThroughPostHold } from './barThroughPost.ts'
import { bracketBolts, bracketBoltsHold } from './bracketBolts.ts'
import type { Hold } from './hold.ts'

/** The link between post and concrete: bars through the post, or the bolts of a bracket. */
export function upliftByConnection(frame: PierFrame, properties: Properties = tableProperties(frame.spec)): Check {
  return frame.spec.support.kind === 'bracket' ? bracketBolts(frame, properties) : barThroughPost(frame, properties)
}

/** The same as a bare number. */
export function connectionHolds(frame: PierFrame, properties: Properties): Hold[] {
  return [frame.spec.support.kind === 'bracket' ? bracketBoltsHold(frame, properties) : barThroughPostHold(frame, properties)]
}
