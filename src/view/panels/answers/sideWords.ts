import type { ExposureLine } from '../../../core/model/result.ts'
import { wordsOf } from '../../../words/index.ts'

/** Lengths less apart than this are one [m]. */
const close = 1e-9

/** Are these the same on every side, as on level ground? */
export const isSame = (lengths: readonly number[]): boolean => Math.max(...lengths) - Math.min(...lengths) < close

/** On which side most wood is below grade; that it is the same on all of them; or that none is. */
export const sideWords = (lines: readonly ExposureLine[]): string => {
  const words = wordsOf('app').answers
  const most = lines.reduce<ExposureLine | null>((best, line) => (line.belowGrade > (best?.belowGrade ?? 0) ? line : best), null)
  if (most === null) return words.allAbove
  return isSame(lines.map(({ belowGrade }) => belowGrade)) ? words.sides.all : words.sides[most.side]
}
