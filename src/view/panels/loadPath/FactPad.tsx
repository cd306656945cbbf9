import { leastYieldMode } from '../../../core/derive/lettingGo.ts'
import type { Fact } from '../../../core/model/fact.ts'
import { said } from '../../../facts/said.ts'
import { wordsOf } from '../../../words/index.ts'
import { useUnits } from '../../hooks/usePier.ts'
import { wouldVerify } from './ChainSummary.tsx'
import { WorkPad } from './WorkPad.tsx'

type Props = Readonly<{
  fact: Fact
  /** False for a link of a path without a number: no ratio then. */
  isInPath?: boolean
}>

/** What a fact says, why it may or may not be counted, its work, and at last what is asked over what there is. */
export const FactPad = ({ fact, isInPath = true }: Props) => {
  const { plain, why, ratio } = said(fact, useUnits())
  const { say } = useUnits()
  const { steps, value, limit } = fact.work
  const all = [...steps, value, limit].filter((one) => one !== null)
  const isCounted = fact.counted !== 'not counted'
  const would = isCounted ? '' : wouldVerify(fact)
  const least = leastYieldMode({ worked: steps })
  const answers = wordsOf('app').answers
  return (
    <div className='pad stack small'>
      {plain !== '' && <p>{plain}</p>}
      {why !== '' && (
        <p>
          <strong>{isCounted ? answers.whyCounted : answers.whyNot}</strong> {why}
        </p>
      )}
      {would !== '' && (
        <p>
          <strong>{wordsOf('loadPath').verifiable}:</strong> {would}
        </p>
      )}
      {!isCounted && all.length > 0 && <p className='quiet'>{wordsOf('loadPath').pad.notCountedNote}</p>}
      <WorkPad steps={all} result={value} least={least && `yield-mode-${least}`} sources={fact.sources} />
      {isInPath && ratio !== '' && value && limit && (
        <p className='pad-ratio ends'>
          <span>{answers.ratio}</span>
          <span>
            {say(limit.value, limit.quantity)} / {say(value.value, value.quantity)} = <strong>{ratio}</strong>
          </span>
        </p>
      )}
    </div>
  )
}
