import type { LoadCase } from '../core/model/result.ts'
import type { LoadNote } from '../core/model/saidIds.ts'
import { wordsOf } from '../words/index.ts'
import { wordIn } from './firstWords.ts'

/** One way in which wind acts on the roof, in a few words. */
export const caseWords = ({ wind, figure, inside, post }: LoadCase): string => {
  const words = wordsOf('loads')
  return [words.wind[wind], words.figure[figure], ...(inside === null ? [] : [words.inside[inside]]), words.post[post]].join(', ')
}
export const combinationWords = (id: string): string => wordIn(wordsOf('loads').combinations, id)
export const loadNotes = (notes: readonly LoadNote[]): readonly string[] => notes.map((id) => wordsOf('loads').notes[id])
