import { useState } from 'react'
import type { Term, Worked } from '../../../core/model/worked.ts'
import { wordsOf } from '../../../words/index.ts'
import { useUnits } from '../../hooks/usePier.ts'
import { Formula } from './Formula.tsx'
import { rowIn } from '../../../facts/firstWords.ts'
import { answerWords } from '../../../facts/answerWords.ts'
import { StandingMark } from '../../kit/Mark.tsx'
import { SourceList } from '../../kit/Sources.tsx'

/** A term by its name in the formula, or by the zone it stands for; one without words is spelt out. */
const termWords = (name: string): string =>
  rowIn<string>(wordsOf('terms'), name) ?? rowIn<string>(wordsOf('zones'), name) ?? name.replace(/([A-Z])/g, ' $1').toLowerCase()

/** What went into a formula: each sign, what it stands for, and its figure. */
export const Terms = ({ of, say }: Readonly<{ of: readonly Term[]; say: (term: Term) => string }>) =>
  of.length > 0 && (
    <table className='terms'>
      <caption className='spoken'>{wordsOf('app').answers.inputs}</caption>
      <tbody>
        {of.map((term) => (
          <tr key={term.symbol + term.name}>
            <td>
              <Formula tex={term.symbol} />
            </td>
            <th scope='row'>{termWords(term.name)}</th>
            <td className='number'>{say(term)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )

/** One number: its name and figure, and on demand how it was worked out: in words, as a formula, with what went in, and its sources. */
export const WorkedDetails = ({ worked }: { worked: Worked }) => {
  const { figure } = useUnits()
  const [open, setOpen] = useState(false)
  const { label, plain } = answerWords(worked.id)
  return (
    <details className='worked' onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary className='ends lines'>
        <span>
          {label} <StandingMark standing={worked.standing} />
        </span>
        <span className='number strong'>{figure(worked.value, worked.quantity)}</span>
      </summary>
      {open && (
        <div className='worked-body stack'>
          {plain !== '' && <p>{plain}</p>}
          {worked.formula !== '' && <Formula tex={worked.formula} as='block' />}
          <Terms of={worked.inputs} say={({ value, quantity }) => figure(value, quantity)} />
          {worked.method === 'integrated' && <p className='quiet'>{wordsOf('glossary').integrated.means}</p>}
          <SourceList ids={worked.sources} />
        </div>
      )}
    </details>
  )
}

/** Numbers behind a plain answer, folded: each opens down to its formula and source. */
export const Numbers = ({ of }: { of: readonly (Worked | null)[] }) => {
  const numbers = of.filter((one) => one !== null)
  return (
    numbers.length > 0 && (
      <details className='worked-numbers'>
        <summary className='arrowed small strong'>{wordsOf('app').answers.numbers(String(numbers.length))}</summary>
        {numbers.map((one) => (
          <WorkedDetails key={one.id} worked={one} />
        ))}
      </details>
    )
  )
}
