import type { Standing } from '../../../core/model/worked.ts'
import { standingWords } from './answerWords.ts'

/** A mark and a word beside every number that was not read from its source. */
export const StandingMark = ({ standing }: { standing: Standing }) => {
  const { mark, meaning } = standingWords(standing)
  if (mark === null) return null
  return (
    <span className='standing'>
      <span aria-hidden='true'>†</span> {mark}
      <span className='spoken'>: {meaning}</span>
    </span>
  )
}
