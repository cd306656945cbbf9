import type { LoadNote } from '../../model/saidIds.ts'
import type { LoadEstimate } from '../../model/spec.ts'

/** Heights over the length of the roof along the wind for which the figures of free roofs hold. Source: asce-7-16-27-3. */
const figureRange = { least: 0.25, most: 1 } as const
const rounding = 1e-9

/** Whether the figures of a free roof cover its height; those of an enclosed one hold outwards. */
export function isOnFigure({ roof, roofHeight, span, overhang }: LoadEstimate): boolean {
  const ratio = roofHeight / (span + 2 * overhang)
  return !roof.startsWith('free') || (ratio >= figureRange.least - rounding && ratio <= figureRange.most + rounding)
}

/** What an estimate leaves out, or why it gives no value. Keys into the text table ("loads"). */
export function estimateNotes(estimate: LoadEstimate, has: Readonly<{ hasWind: boolean; hasSideways: boolean }>): LoadNote[] {
  const isFree = estimate.roof.startsWith('free')
  const notes: LoadNote[] = ['main-frame-only', 'interior-post']
  if (!isOnFigure(estimate)) notes.push('height-off-figure')
  else if (!has.hasWind) notes.push('roof-off-figure')
  if (isFree && has.hasWind) notes.push(has.hasSideways ? 'push-on-roof-only' : 'no-push-on-level-roof')
  if (!isFree) notes.push('push-needs-drawing', ...(estimate.overhang > 0 ? (['overhang-from-below'] as const) : []))
  if (estimate.groundSnow > 0) notes.push('snow-without-drifts')
  return notes
}
