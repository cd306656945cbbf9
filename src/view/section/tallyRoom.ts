import type { Theme } from '../../state/appState.ts'
import type { Box } from './ink.ts'

/** Height that the word on mistakes takes over the head of a picture, narrow or wide [px]. */
const underMistakes = [112, 72] as const

/**
 * Room at the upper left of a picture that the tally of the years stands in, which no words may cover [px]. `isLow`: it stands under the
 * word on what is built wrong.
 */
export const tallyRoom = ({ width }: Readonly<{ width: number }>, theme: Theme, isLow: boolean): Box => {
  const scale = theme === 'dark' ? 1.19 : 1
  const isNarrow = width < 560
  const above = isLow ? underMistakes[isNarrow ? 0 : 1] * scale : 0
  return isNarrow ? { x: 0, y: 0, width: 172, height: 92 + above } : { x: 0, y: 0, width: 200 * scale, height: 160 * scale + above }
}

/** Height that it takes at the foot of a column of the comparison, in one row with no words below it [px]. */
export const columnTally = 68
