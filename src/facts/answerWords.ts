import { wordsOf } from '../words/index.ts'
import type { Fact } from '../core/model/fact.ts'
import { rowIn, wordIn } from './firstWords.ts'

/** What any number or check is called and what it says, in one plain sentence. */
export const answerWords = (id: string): Readonly<{ label: string; plain: string }> =>
  rowIn(wordsOf('answers'), id) ?? { label: id, plain: '' }
export const reasonWords = (reason: Fact['reason'] | undefined): string => (reason == null ? '' : wordIn(wordsOf('reasons'), reason))
