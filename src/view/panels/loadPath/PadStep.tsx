import type { SourceId } from '../../../core/engineering/sources.ts'
import type { Term, Worked } from '../../../core/model/worked.ts'
import { wordsOf } from '../../../words/index.ts'
import { useUnits } from '../../hooks/usePier.ts'
import { Formula } from '../answers/Formula.tsx'
import { answerWords } from '../../../facts/answerWords.ts'
import { StandingMark } from '../../kit/Mark.tsx'
import { Terms } from '../answers/WorkedDetails.tsx'
import { numbersIn } from './numbersIn.ts'
import { type PadNumber, padNumber, padSystem, padTex, padUnits, termNumber } from './padUnits.ts'

type Props = Readonly<{
  worked: Worked
  /** Inputs to be named here; those that a line above has named are left out. */
  terms: readonly Term[]
  isLeast: boolean
  isResult: boolean
  sourceNumber: (id: SourceId) => number
}>

/** As text: its unit set close where the trade sets it close. */
const printed = ({ text: digits, unit }: PadNumber): string =>
  unit === '' || unit === '°' || unit === '%' ? `${digits}${unit}` : `${digits} ${unit}`

/** One number of a calculation: its name, its formula, the formula with its numbers, and what comes of it. */
export const PadStep = ({ worked, terms, isLeast, isResult, sourceNumber }: Props) => {
  const words = wordsOf('loadPath').pad
  const { figure, system } = useUnits()
  const padIn = padSystem(worked, system)
  const units = padUnits(worked, padIn)
  const numbers = numbersIn(
    worked.formula,
    worked.inputs.map((term) => ({ symbol: term.symbol, number: padTex(termNumber(term, units, padIn)) })),
  )
  const isLength = worked.quantity === 'length'
  const own = padNumber(worked.value, worked.quantity, padUnits(worked, system), system)
  const result = numbers === null || isLength ? figure(worked.value, worked.quantity) : printed(own)
  return (
    <section className='pad-step stack' data-result={isResult || undefined} data-least={isLeast || undefined}>
      <h5 className='pad-name ends'>
        <span>
          {answerWords(worked.id).label}
          {isLeast && <span> · {words.least}</span>} <StandingMark standing={worked.standing} />
          {worked.sources.length > 0 && (
            <span className='quiet light unbroken'> [{[...new Set(worked.sources)].map(sourceNumber).join(', ')}]</span>
          )}
        </span>
        <span className='number'>{result}</span>
      </h5>
      {worked.formula !== '' && <Formula tex={worked.formula} as='block' />}
      {numbers !== null && <Formula tex={`=${numbers}`} as='line' />}
      {padIn !== system && <p className='quiet'>{words.writtenFor}</p>}
      <Terms of={terms} say={(term) => printed(termNumber(term, units, padIn))} />
      {worked.method === 'integrated' && <p className='quiet'>{wordsOf('glossary').integrated.means}</p>}
    </section>
  )
}
