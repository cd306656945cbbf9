import type { Issue } from '../../core/model/issue.ts'
import { wordIn } from '../../facts/firstWords.ts'
import { wordsOf } from '../../words/index.ts'

/** What has moved in a pier since the version that wrote it, and why, a subject a line. */
export const MovedList = ({ of }: Readonly<{ of: readonly Issue[] }>) => (
  <ul className='whole-row stack tight small'>
    {of.map(({ code }) => (
      <li key={code}>{wordIn(wordsOf('moved'), code)}</li>
    ))}
  </ul>
)
