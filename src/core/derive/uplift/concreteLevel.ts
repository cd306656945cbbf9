import type { PierFrame } from '../pierFrame.ts'
import { barLevels, liftAt } from '../placedZones.ts'

/** Strength level to the level of 0.6 W, once. */
export const allowableShare = 0.6

/** Lowest level at which the connection pulls on the mix [m], signed; null without a connection in it. */
export function pullLevel(frame: PierFrame): number | null {
  if (frame.spec.support.kind === 'bracket') return (frame.bracketSite?.landing ?? 0) - frame.spec.support.bracket.embedment
  const lowest = barLevels(frame)[0]
  const role = lowest === undefined ? undefined : roleAt(frame, lowest)
  return role === 'concrete' || role === 'dry-mix' ? (lowest ?? null) : null
}

/**
 * Level at which the pier could part under a pull [m], signed: below its connection; where there is none, at the end of the post that
 * stands in mix placed dry, whose lower part nobody has seen. Null where no mix could part.
 */
export function partingLevel(frame: PierFrame, pull = pullLevel(frame)): number | null {
  if (pull !== null || !frame.standing) return pull
  const { foot, fillBottom } = frame
  return foot > fillBottom && roleAt(frame, foot) === 'dry-mix' && frame.spec.bars === null ? foot : null
}

const roleAt = (frame: PierFrame, y: number) => frame.lifts.find((lift) => lift.id === liftAt(frame, y))?.role
