import type { Theme } from '../../state/appState.ts'
import type { Box } from './ink.ts'

/** Room at the upper left of a picture that the tally of the years stands in, which no words may cover [px]. */
export const tallyRoom = ({ width }: Readonly<{ width: number }>, theme: Theme): Box => {
  const scale = theme === 'dark' ? 1.19 : 1
  return width < 560 ? { x: 0, y: 0, width: 172, height: 92 } : { x: 0, y: 0, width: 200 * scale, height: 160 * scale }
}

/** Height that it takes at the foot of a column of the comparison, in one row with no words below it [px]. */
export const columnTally = 68
