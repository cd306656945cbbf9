import type { VerdictMark } from '../../../core/model/fact.ts'
import { standingsInOrder } from '../../../core/model/worked.ts'
import { wordsOf } from '../../../words/index.ts'
import { Pairs } from '../../kit/FactTable.tsx'
import { MarkedWord } from '../../kit/Mark.tsx'

/** Every mark with its meaning, so that no fact hides behind a mark. */
export const MarkLegend = () => {
  const { verdicts, verdictMeanings } = wordsOf('app')
  const meanings = Object.entries(verdictMeanings) as [keyof typeof verdictMeanings & VerdictMark, string][]
  return (
    <Pairs
      as='marks'
      of={[
        ...meanings.map(([mark, meaning]) => [<MarkedWord key={mark} name={mark} word={verdicts[mark]} />, meaning] as const),
        ...standingsInOrder.flatMap((standing) => {
          const { mark, meaning } = wordsOf('standings')[standing]
          const name = (
            <>
              <span aria-hidden='true'>†</span> {mark}
            </>
          )
          return mark === null ? [] : [[name, meaning] as const]
        }),
      ]}
    />
  )
}
