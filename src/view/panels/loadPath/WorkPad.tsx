import type { SourceId } from '../../../core/engineering/sources.ts'
import type { Term, Worked } from '../../../core/model/worked.ts'
import { wordsOf } from '../../../words/index.ts'
import { SourceLine } from '../../kit/Sources.tsx'
import { PadStep } from './PadStep.tsx'
import './pad.css'

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

type Props = Readonly<{
  steps: readonly Worked[]
  /** The step that all lead to: ruled off like the end of a sum. */
  result: Worked | null
  /** Id of a step that governs for being the least of its kind. */
  least?: string | null
  /** Sources that no step names. */
  sources?: readonly SourceId[]
}>

/** Work as on a calculation pad: each line a formula, the same with its numbers, what comes of it; sources numbered below. */
export const WorkPad = ({ steps, result, least = null, sources = [] }: Props) => {
  const listed = [...new Set([...steps.flatMap((one) => one.sources), ...sources])]
  return (
    <>
      {linesOf(steps).map(({ worked, terms }, i) => (
        <PadStep
          // biome-ignore lint/suspicious/noArrayIndexKey: the steps of one calculation stay in order, and two may have one name
          key={i}
          worked={worked}
          terms={terms}
          isLeast={worked.id === least}
          isResult={worked === result}
          sourceNumber={(id) => listed.indexOf(id) + 1}
        />
      ))}
      {listed.length > 0 && (
        <div className='source-list'>
          <h5>{wordsOf('loadPath').pad.sources}</h5>
          <ol className='pad-sources'>
            {listed.map((id) => (
              <SourceLine key={id} id={id} />
            ))}
          </ol>
        </div>
      )}
    </>
  )
}
