import { leastYieldMode } from '../../../core/derive/lettingGo.ts'
import type { Check } from '../../../core/model/worked.ts'
import { wordsOf } from '../../../words/index.ts'
import { useUnits } from '../../hooks/useUnits.ts'
import { answerWords, reasonWords } from '../answers/words.ts'
import { wouldVerify } from './linkWords.ts'
import { WorkPad } from './WorkPad.tsx'

/** The last line: what is asked over what there is. */
const Ratio = ({ check }: { check: Check }) => {
  const { say } = useUnits()
  const { ratio, demand, allowable } = check
  if (ratio === undefined || !demand || !allowable) return null
  return (
    <p className='pad-ratio'>
      <span>{wordsOf('app').answers.ratio}</span>
      <span>
        {say(demand.value, demand.quantity)} / {say(allowable.value, allowable.quantity)} = <strong>{ratio.toFixed(2)}</strong>
      </span>
    </p>
  )
}

/** What a check says, why it may or may not be counted, and its work. `isInPath` is false for a link of a path without a number: no ratio then. */
export const LinkPad = ({ check, isInPath = true }: { check: Check; isInPath?: boolean }) => {
  const words = wordsOf('loadPath')
  const steps = [...check.worked, ...(check.allowable ? [check.allowable] : []), ...(check.demand ? [check.demand] : [])]
  const isCounted = check.counted !== 'not counted'
  const least = leastYieldMode(check)
  const why = reasonWords(check.why)
  const would = isCounted ? '' : wouldVerify(check.why)
  const { plain } = answerWords(check.id)
  return (
    <div className='pad'>
      {plain !== '' && <p>{plain}</p>}
      {why !== '' && (
        <p>
          <strong>{isCounted ? wordsOf('app').answers.whyCounted : wordsOf('app').answers.whyNot}</strong> {why}
        </p>
      )}
      {would !== '' && (
        <p>
          <strong>{words.verifiable}:</strong> {would}
        </p>
      )}
      {!isCounted && steps.length > 0 && <p className='quiet'>{words.pad.notCountedNote}</p>}
      <WorkPad steps={steps} result={check.allowable} least={least && `yield-mode-${least}`} sources={check.sources} />
      {isInPath && <Ratio check={check} />}
    </div>
  )
}
