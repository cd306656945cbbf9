import type { Check } from '../../../core/model/worked.ts'
import { wordsOf } from '../../../words/index.ts'
import { usePointing } from '../../hooks/usePointing.ts'
import { useUnits } from '../../hooks/useUnits.ts'
import { Mark } from '../../kit/Mark.tsx'
import { answerWords, reasonWords, verdictOf } from './words.ts'
import { SourceList, WorkedDetails } from './WorkedDetails.tsx'

/** One link or check: its mark and word, its number when one may be stated, and why not when none may. More on demand. */
export const CheckRow = ({ check }: { check: Check }) => {
  const { say } = useUnits()
  const pointing = usePointing(check.where)
  const { label, plain } = answerWords(check.id)
  const { mark, word } = verdictOf(check)
  const why = reasonWords(check.why)
  const figure = check.counted === 'not counted' ? null : check.allowable
  return (
    <details className='row check-row' {...pointing}>
      <summary>
        <Mark name={mark} />
        <span className='row-name'>
          <span>{label}</span>
          <span className='row-word'>
            <span className={`mark-${mark}`}>{word}</span>
            {check.demand && <span> · {wordsOf('app').answers.needs(say(check.demand.value, check.demand.quantity))}</span>}
          </span>
        </span>
        <span className='row-number'>{figure ? say(figure.value, figure.quantity) : ''}</span>
      </summary>
      <div className='row-detail'>
        {plain !== '' && <p>{plain}</p>}
        {why !== '' && (
          <p>
            <strong>{check.counted === 'not counted' ? wordsOf('app').answers.whyNot : wordsOf('app').answers.whyCounted}</strong> {why}
          </p>
        )}
        {figure && <WorkedDetails worked={figure} />}
        {check.worked.map((worked) => (
          <WorkedDetails key={worked.id} worked={worked} />
        ))}
        {check.demand && <WorkedDetails worked={check.demand} />}
        {check.worked.length === 0 && <SourceList ids={check.sources} />}
      </div>
    </details>
  )
}
