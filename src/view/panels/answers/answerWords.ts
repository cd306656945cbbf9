import type { Standing } from '../../../core/model/worked.ts'
import { wordsOf } from '../../../words/index.ts'

/** The row of a table by a key that may not be in it. */
export const rowOf = <T>(table: Readonly<Record<string, T>>, id: string): T | undefined =>
  Object.hasOwn(table, id) ? table[id] : undefined

/** What an answer that stands on the opening page is called and what it says; every other is in `words.ts`. */
export const answerWords = (id: string): Readonly<{ label: string; plain: string }> =>
  rowOf(wordsOf('headlines'), id) ?? { label: id, plain: '' }
export const zoneWords = (label: string): string => rowOf(wordsOf('zones'), label) ?? label
export const standingWords = (standing: Standing) => wordsOf('standings')[standing]
