import type { Check } from '../../model/worked.ts'
import type { Zone } from '../../model/zone.ts'
import type { PierFrame } from '../pierFrame.ts'
import { concreteBreakout, concreteBreakoutHold } from './concreteBreakout.ts'
import { partingLevel, pullLevel } from './concreteLevel.ts'
import { concreteTension, concreteTensionHold } from './concreteTension.ts'
import type { Hold } from './hold.ts'

export { pullLevel }

/** What the mix has to carry: a cone out of its top, and the pull through the plane under the connection. Empty where no mix could part. */
export function upliftByConcrete(frame: PierFrame, zones: readonly Zone[]): Check[] {
  const pull = pullLevel(frame)
  const part = partingLevel(frame)
  return [pull === null ? null : concreteBreakout(frame, pull), part === null ? null : concreteTension(frame, zones, part)].filter(
    (check) => check !== null,
  )
}

/** The same as bare numbers. */
export function concreteHolds(frame: PierFrame): Hold[] {
  const pull = pullLevel(frame)
  const part = partingLevel(frame)
  return [pull === null ? null : concreteBreakoutHold(frame, pull), part === null ? null : concreteTensionHold(frame, part)].filter(
    (one) => one !== null,
  )
}
