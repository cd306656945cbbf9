import type { InputId } from '../../../core/uncertainty/inputs.ts'
import { inThousand } from '../../../core/uncertainty/summary.ts'
import { locale, wordsOf } from '../../../words/index.ts'
import { answerWords } from '../../../facts/answerWords.ts'

/** A count out of all tries, in words that never turn few into none. */
export const countWords = (count: number, samples: number): string =>
  wordsOf('sure').inThousand(inThousand(count, samples), wholeNumber(samples))

export const wholeNumber = (value: number): string => value.toLocaleString(locale())

export const inputWords = (id: InputId) => wordsOf('sure').inputs[id]

/** Why a try has no number: the link by its name, or that there could be no such pier. */
export const withoutWords = (id: string): string => {
  const sure = wordsOf('sure')
  return id === 'not-possible' ? sure.notPossible : sure.withoutLink(answerWords(id).label)
}

/** An amount that is not parted from its unit at the end of a line. */
export const unbroken = (amount: string): string => amount.replaceAll(' ', '\u00a0')
