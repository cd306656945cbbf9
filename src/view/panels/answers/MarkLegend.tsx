import { standings } from '../../../core/model/worked.ts'
import { type Words, wordsOf } from '../../../words/index.ts'
import { type MarkName, MarkedWord } from '../../kit/Mark.tsx'

const verdicts: readonly (readonly [MarkName, keyof Words['app']['verdictMeanings']])[] = [
  ['meets', 'meets'],
  ['short', 'short'],
  ['counted', 'counted'],
  ['judgement', 'judgement'],
  ['bound', 'bound'],
  ['unverified', 'unverified'],
]

/** Every mark with its meaning, so that no fact hides behind a mark. */
export const MarkLegend = () => (
  <dl className='marks'>
    {verdicts.map(([mark, word]) => (
      <div key={word}>
        <dt>
          <MarkedWord name={mark} word={wordsOf('app').verdicts[word]} />
        </dt>
        <dd>{wordsOf('app').verdictMeanings[word]}</dd>
      </div>
    ))}
    {standings.map((standing) => {
      const { mark, meaning } = wordsOf('standings')[standing]
      return mark === null ? null : (
        <div key={standing}>
          <dt>
            <span aria-hidden='true'>†</span> {mark}
          </dt>
          <dd>{meaning}</dd>
        </div>
      )
    })}
  </dl>
)
