import { wordsOf } from '../../../words/index.ts'
import { type Say, useUnits } from '../../hooks/useUnits.ts'
import { answerWords } from '../answers/words.ts'
import type { ChainView } from './chainView.ts'
import { wouldVerify } from './linkWords.ts'
import { showLoads } from './showLoads.ts'

/** No more digits than a ratio deserves; but near 1 it is not rounded onto it. */
const shareWords = (ratio: number, say: Say): string => {
  const words = wordsOf('loadPath')
  if (ratio > 1) return words.times(String(Number(ratio.toPrecision(ratio < 1.1 ? 3 : 2))))
  return words.ratio(ratio > 0.99 ? say(ratio, 'ratio', { unit: '%' }) : `${Math.round(100 * ratio)}%`)
}

/** What is asked, and how much of the path that takes; nothing of the kind where a needed link is not counted. The verdict is the title block's. */
export const ChainSummary = ({ chain }: { chain: ChainView }) =>
  chain.allowable === null ? <Unverified chain={chain} /> : <Asked chain={chain} />

const Asked = ({ chain }: { chain: ChainView }) => {
  const words = wordsOf('loadPath')
  const { say } = useUnits()
  const { demand, ratio, isEstimate } = chain
  if (demand === null)
    return (
      <p className='chain-summary chain-ask'>
        <span>{words.noDemand}</span>
        <button type='button' className='button' onClick={showLoads}>
          {words.enterLoads}
        </button>
      </p>
    )
  if (demand <= 0) return <p className='chain-summary'>{words.noNetUplift}</p>
  return (
    <div className='chain-summary'>
      <p>
        {wordsOf('app').answers.askedFor[isEstimate ? 'estimated' : 'entered'](say(demand, 'force'))}
        {ratio !== null && ` · ${shareWords(ratio, say)}`}
      </p>
      {isEstimate && <p className='quiet'>{words.estimateNote}</p>}
    </div>
  )
}

const Unverified = ({ chain }: { chain: ChainView }) => {
  const words = wordsOf('loadPath')
  const ways = [...new Map(chain.uncounted.map((check) => [wouldVerify(check.why), check])).entries()].filter(([how]) => how !== '')
  return (
    <div className='chain-summary'>
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
