import { leastYieldMode } from '../../../core/derive/lettingGo.ts'
import type { SourceId } from '../../../core/engineering/sources.ts'
import type { Check, Term, Worked } from '../../../core/model/worked.ts'
import { text } from '../../../text/index.ts'
import { late } from '../../../text/late.ts'
import { answerWords, reasonWords } from '../answers/words.ts'
import { SourceLine } from '../answers/WorkedDetails.tsx'
import { PadStep } from './PadStep.tsx'
import { wouldVerify } from './linkWords.ts'
import './pad.css'

const words = late.loadPath

type Line = Readonly<{ worked: Worked; terms: readonly Term[] }>

/** Each number with those of its inputs that no line above has named yet. */
function linesOf(steps: readonly Worked[]): readonly Line[] {
  const named = new Set<string>()
  return steps.map((worked) => {
    const terms = worked.inputs.filter((term) => !named.has(`${term.symbol} ${term.name} ${term.value}`))
    for (const term of worked.inputs) named.add(`${term.symbol} ${term.name} ${term.value}`)
    return { worked, terms }
  })
}

/** The work of one check, as on a calculation pad: each line a formula, the same with its numbers, what comes of it; sources below. */
export const LinkPad = ({ check }: { check: Check }) => {
  const steps = [...check.worked, ...(check.allowable ? [check.allowable] : []), ...(check.demand ? [check.demand] : [])]
  const sources: SourceId[] = [...new Set([...steps.flatMap((one) => one.sources), ...check.sources])]
  const least = leastYieldMode(check)
  const why = reasonWords(check.why)
  const would = check.counted === 'not counted' ? wouldVerify(check.why) : ''
  const { plain } = answerWords(check.id)
  return (
    <div className='pad'>
      {plain !== '' && <p>{plain}</p>}
      {why !== '' && (
        <p>
          <strong>{check.counted === 'not counted' ? text.app.answers.whyNot : text.app.answers.whyCounted}</strong> {why}
        </p>
      )}
      {would !== '' && (
        <p>
          <strong>{words.verifiable}:</strong> {would}
        </p>
      )}
      {check.counted === 'not counted' && steps.length > 0 && <p className='quiet'>{words.pad.notCountedNote}</p>}
      {linesOf(steps).map(({ worked, terms }) => (
        <PadStep
          key={worked.id}
          worked={worked}
          terms={terms}
          isLeast={least !== null && worked.id === `yield-mode-${least}`}
          isResult={worked === check.allowable}
          sourceNumber={(id) => sources.indexOf(id) + 1}
        />
      ))}
      {sources.length > 0 && (
        <div className='source-list'>
          <h5>{words.pad.sources}</h5>
          <ol className='pad-sources'>
            {sources.map((id) => (
              <SourceLine key={id} id={id} />
            ))}
          </ol>
        </div>
      )}
    </div>
  )
}
