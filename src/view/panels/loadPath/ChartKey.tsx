import { wordsOf } from '../../../words/index.ts'
import { MarkedWord } from '../../kit/Mark.tsx'
import type { ChainView, ChartLink } from './chainView.ts'
import { linkMark } from './linkWords.ts'

/** The marks of the chart that have no words beside them, with their words. */
export const ChartKey = ({ chain }: { chain: ChainView }) => {
  const links: readonly ChartLink[] = chain.groups.flatMap((group) => group.links)
  const marks = (['counted', 'judgement'] as const).filter((mark) => links.some((link) => linkMark(link) === mark))
  return (
    <ul className='chart-key'>
      {marks.map((mark) => (
        <li key={mark}>
          <MarkedWord name={mark} word={wordsOf('app').verdicts[mark]} />
        </li>
      ))}
    </ul>
  )
}
