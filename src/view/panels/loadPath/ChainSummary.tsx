import { text } from '../../../text/index.ts'
import { late } from '../../../text/late.ts'
import { type Say, useUnits } from '../../hooks/useUnits.ts'
import { answerWords } from '../answers/words.ts'
import { Verdict } from '../Mark.tsx'
import { EstimateMark } from './EstimateMark.tsx'
import type { ChainView } from './chainView.ts'
import { wouldVerify } from './linkWords.ts'
import { showLoads } from './showLoads.ts'

const words = late.loadPath

/** No more digits than a ratio deserves; but near 1 it is not rounded onto it. */
const shareWords = (ratio: number, say: Say): string =>
  Math.abs(ratio - 1) < 0.01 ? say(ratio, 'ratio', { unit: '%' }) : `${Math.round(100 * ratio)}%`

/** What is asked, and whether the path holds it; nothing of the kind where a needed link is not counted. */
export const ChainSummary = ({ chain }: { chain: ChainView }) =>
  chain.allowable === null ? <Unverified chain={chain} /> : <Asked chain={chain} />

const Asked = ({ chain }: { chain: ChainView }) => {
  const { say } = useUnits()
  const { demand, ratio, isEstimate } = chain
  const kind = isEstimate ? 'estimated' : 'entered'
  if (demand === null)
    return (
      <p className='chain-summary'>
        {words.noDemand}{' '}
        <button type='button' className='button' onClick={showLoads}>
          {words.enterLoads}
        </button>
      </p>
    )
  if (demand <= 0) return <p className='chain-summary'>{words.noNetUplift}</p>
  const holds = ratio !== null && ratio <= 1
  return (
    <div className='chain-summary'>
      <Verdict name={holds ? 'meets' : 'short'} word={(holds ? text.app.answers.notBelow : text.app.answers.below)[kind]} />
      <p className='quiet'>
        {text.app.answers.askedFor[kind](say(demand, 'force'))}
        {ratio !== null && ` · ${words.ratio(shareWords(ratio, say))}`} <EstimateMark shown={isEstimate} />
      </p>
      {isEstimate && <p className='quiet'>{words.estimateNote}</p>}
    </div>
  )
}

const Unverified = ({ chain }: { chain: ChainView }) => {
  const ways = [...new Map(chain.uncounted.map((check) => [wouldVerify(check.why), check])).entries()].filter(([how]) => how !== '')
  return (
    <div className='chain-summary'>
      <Verdict name='unverified' word={words.unverified} />
      <p>{words.unverifiedHelp}</p>
      {ways.length > 0 && (
        <>
          <h4>{words.verifiable}</h4>
          <ul className='bullets'>
            {ways.map(([how, check]) => (
              <li key={how}>
                <strong>{answerWords(check.id).label}:</strong> {how}
              </li>
            ))}
          </ul>
        </>
      )}
    </div>
  )
}
