import type { Fact } from '../../core/model/fact.ts'
import { toldName } from '../../facts/statusWords.ts'
import { wordsOf } from '../../words/index.ts'
import { Mark } from './Mark.tsx'

/** Beside a number that a change raised: what the same change made worse. Nothing where nothing is. */
export const Worse = ({ facts }: Readonly<{ facts: readonly Fact[] }>) =>
  facts.length > 0 && (
    <span className='block small'>
      <Mark name='warning' /> {wordsOf('app').status.worse(facts.map(toldName).join('; '))}
    </span>
  )
