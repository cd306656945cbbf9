import type { ReactNode } from 'react'
import { stepsOf } from '../../core/derive/build/buildSteps.ts'
import type { PierResult } from '../../core/model/result.ts'
import { cautionsOf } from '../../facts/practiceWords.ts'
import { wordsOf } from '../../words/index.ts'
import { useUnits } from '../hooks/usePier.ts'
import { issueText } from '../../facts/issueWords.ts'
import { questionsFor } from './questions.ts'

export type BlockProps = Readonly<{ result: PierResult }>

/** A part of the sheet under its own heading; it is never broken over two columns. */
export const Block = ({ title, children }: Readonly<{ title: string; children: ReactNode }>) => (
  <section className='paper-block'>
    <h3>{title}</h3>
    {children}
  </section>
)

/** What is to be seen on the day: the method's own steps with a box each, what goes wrong, and a line for initials. */
export const OnTheDay = ({ result: { spec } }: BlockProps) => {
  const words = wordsOf('sheet')
  const cautions = cautionsOf(spec)
  return (
    <Block title={words.day.title}>
      <p className='quiet'>{words.day.note}</p>
      <ul className='paper-boxes'>
        {stepsOf(spec).map((step) => (
          <li key={step}>
            <span className='paper-box' aria-hidden='true' />
            {wordsOf('steps')[step]}
          </li>
        ))}
      </ul>
      {cautions.length > 0 && (
        <>
          <h4>{words.day.wrong}</h4>
          <ul>
            {cautions.map((caution) => (
              <li key={caution}>{caution}</li>
            ))}
          </ul>
        </>
      )}
      <p className='paper-sign'>
        {words.day.initials} <span /> {words.day.dateLine} <span />
      </p>
    </Block>
  )
}

export const Questions = ({ results }: Readonly<{ results: readonly PierResult[] }>) => {
  const words = wordsOf('sheet')
  return (
    <Block title={words.ask}>
      <ol>
        {questionsFor(results).map((id) => (
          <li key={id}>{words.questions[id]}</li>
        ))}
      </ol>
    </Block>
  )
}

export const Issues = ({ result: { issues } }: BlockProps) => {
  const { system } = useUnits()
  return (
    <Block title={wordsOf('sheet').issues}>
      <ul>
        {issues.map((issue) => (
          <li key={issue.code + issue.path}>{issueText(issue, system)}</li>
        ))}
      </ul>
    </Block>
  )
}

/** Danger first. */
export const Cautions = () => (
  <Block title={wordsOf('sheet').cautions}>
    <ul>
      {wordsOf('cautions').standing.map((caution) => (
        <li key={caution.id}>
          <b>{caution.short}</b> {caution.long}
        </li>
      ))}
    </ul>
  </Block>
)

/** As many whole words of a text as fit, with three dots where some are left out; a single word longer than that is cut. */
export function shortened(text: string, most: number): string {
  if (text.length <= most) return text
  const cut = text.slice(0, most)
  const end = cut.search(/\s\S*$/)
  return `${(end > 0 ? cut.slice(0, end) : cut).trimEnd()} …`
}
