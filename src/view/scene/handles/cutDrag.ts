import type { Cut } from '../../../core/model/solid.ts'
import { radians } from '../../../core/units/quantity.ts'
import { widestCut } from '../../../state/actions/view.ts'

/** Which handle of the cut: one of its two sides, or its middle, which turns the whole. */
export type HandleId = 'left' | 'right' | 'turn'

const turn = 2 * Math.PI
/** The short way from one plan angle to another [rad]. */
export const shortWay = (from: number, to: number): number => ((((to - from) % turn) + 1.5 * turn) % turn) - Math.PI

/**
 * The cut after one of its handles has moved by `by` radians of plan angle since the drag began: a side moves alone, the other
 * stays; the middle takes both along. The opening ends at whole and at its widest.
 */
export function draggedCut(begun: Cut, handle: HandleId, by: number): Cut {
  if (handle === 'turn') return { open: begun.open, facing: radians(begun.facing + by) }
  const outward = handle === 'left' ? 1 : -1
  const open = Math.min(widestCut, Math.max(0, begun.open + outward * by))
  return { open: radians(open), facing: radians(begun.facing + (outward * (open - begun.open)) / 2) }
}

/** Plan angle at which a handle stands. */
export const handleAngle = ({ open, facing }: Cut, handle: HandleId): number =>
  handle === 'turn' ? facing : facing + (handle === 'left' ? open / 2 : -open / 2)
