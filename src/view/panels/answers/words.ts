import type { CautionId, ReasonId } from '../../../core/model/saidIds.ts'
import type { Check } from '../../../core/model/worked.ts'
import { wordsOf } from '../../../words/index.ts'
import type { MarkName } from '../Mark.tsx'
import { rowOf } from './answerWords.ts'

export { standingWords, zoneWords } from './answerWords.ts'

/** What any number or check is called and what it says, in one plain sentence. */
export const answerWords = (id: string): Readonly<{ label: string; plain: string }> =>
  rowOf(wordsOf('answers'), id) ?? { label: id, plain: '' }

export const reasonWords = (why: ReasonId | undefined): string => (why === undefined ? '' : wordsOf('reasons')[why])
/** A term by its name in the formula, or by the zone it stands for; one without words is spelt out. */
export const termWords = (name: string): string =>
  rowOf(wordsOf('terms'), name) ?? rowOf(wordsOf('zones'), name) ?? name.replace(/([A-Z])/g, ' $1').toLowerCase()
export const cautionWords = (key: CautionId): string => wordsOf('cautions').ofPiers[key]

/** How a check may be used, as a mark and a word. With a demand, whether it is met. */
export const verdictOf = (check: Check): Readonly<{ mark: MarkName; word: string }> => {
  const words = wordsOf('app').verdicts
  if (check.counted === 'not counted') return { mark: 'unverified', word: words.unverified }
  if (check.counted === 'upper bound') return { mark: 'bound', word: words.bound }
  if (check.choice) return check.choice.reached ? { mark: 'meets', word: words.asAsked } : { mark: 'short', word: words.notAsAsked }
  const condition = rowOf<Readonly<{ met: string; unmet: string }>>(wordsOf('app').conditions, check.why ?? '')
  if (check.ratio !== undefined && condition)
    return check.ratio <= 1 ? { mark: 'meets', word: condition.met } : { mark: 'unneeded', word: condition.unmet }
  if (check.ratio !== undefined) return check.ratio <= 1 ? { mark: 'meets', word: words.meets } : { mark: 'short', word: words.short }
  if (check.counted === 'counted') return { mark: 'counted', word: words.counted }
  return { mark: 'judgement', word: words.judgement }
}
