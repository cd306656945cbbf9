import { text } from '../../../text/index.ts'
import { type MarkName, Verdict } from '../Mark.tsx'
import type { ChainView, ChartLink } from './chainView.ts'
import { linkMark } from './linkWords.ts'

const words: Partial<Readonly<Record<MarkName, string>>> = {
  counted: text.app.verdicts.counted,
  judgement: text.app.verdicts.judgement,
  bound: text.app.verdicts.bound,
  unverified: text.app.verdicts.unverified,
}

/** The marks that stand in the chart just now, with their words. */
export const ChartKey = ({ chain }: { chain: ChainView }) => {
  const links: readonly ChartLink[] = chain.groups.flatMap((group) => group.links)
  const marks = [...new Set(links.map(linkMark))]
  return (
    <ul className='chart-key'>
      {marks.map((mark) => {
        const word = words[mark]
        return (
          word && (
            <li key={mark}>
              <Verdict name={mark} word={word} />
            </li>
          )
        )
      })}
    </ul>
  )
}
