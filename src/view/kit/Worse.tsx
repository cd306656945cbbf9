import type { ToldCheck } from '../../core/derive/report/status.ts'
import { toldName } from '../../facts/statusWords.ts'
import { wordsOf } from '../../words/index.ts'
import { Mark } from './Mark.tsx'

/** Beside a number that a change raised: what the same change made worse. Nothing where nothing is. */
export const Worse = ({ checks }: Readonly<{ checks: readonly ToldCheck[] }>) =>
  checks.length > 0 && (
    <span className='block small'>
      <Mark name='warning' /> {wordsOf('app').status.worse(checks.map(toldName).join('; '))}
    </span>
  )
