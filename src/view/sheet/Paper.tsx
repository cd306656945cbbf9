import type { ReactNode } from 'react'
import { wordsOf } from '../../words/index.ts'
import { version } from '../../../package.json'

/** What goes on every page, made once when the sheet is opened. */
export type PaperFacts = Readonly<{ name: string; date: string; mark: string; view: string; scale: string; units: 'us' | 'metric' }>

type Props = Readonly<{ facts: PaperFacts; at: number; of: number; letter: number; children: ReactNode }>

/** One page: its head, its body and the caution that goes with every number. */
export const Paper = ({ facts, at, of, letter, children }: Props) => {
  const words = wordsOf('sheet')
  return (
    <article className='paper' aria-label={words.pageLabel(at)} style={{ '--letter': `${letter}pt` } as React.CSSProperties}>
      <header className='paper-head'>
        <h2>{facts.name}</h2>
        <p>
          {facts.mark} · {facts.date} · {words.page(at, of)}
        </p>
      </header>
      <div className='paper-body'>{children}</div>
      <footer className='paper-foot'>
        <b>{words.status}.</b> {wordsOf('takeAlong').sheet.caution}
      </footer>
    </article>
  )
}

/** Who, what, when, in which units, over the whole width; empty fields are for the pen. */
export const PaperTitle = ({ facts }: Readonly<{ facts: PaperFacts }>) => {
  const words = wordsOf('sheet')
  const { block } = words
  const fields = [
    [block.project, facts.name],
    [block.view, facts.view],
    [block.scale, facts.scale],
    [block.mark, facts.mark],
    [block.date, facts.date],
    [block.units, words.units[facts.units]],
    [block.version, `${wordsOf('app').name} ${version}`],
    [block.revision, ''],
    [block.madeBy, ''],
    [block.engineer, ''],
  ] as const
  return (
    <section className='paper-title'>
      <dl>
        {fields.map(([label, value]) => (
          <div key={label}>
            <dt className='quiet'>{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </section>
  )
}

/** Parts of a sheet in the columns that they were given. */
export const PaperColumns = ({ columns, parts }: Readonly<{ columns: readonly (readonly number[])[]; parts: readonly ReactNode[] }>) => (
  <div className='paper-columns'>
    {columns.map((column, i) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: a column is its place
      <div key={i}>{column.map((place) => parts[place])}</div>
    ))}
  </div>
)

/** Parts to be measured before they are laid out, each in a box of its own. */
export const Ruled = ({ name, parts }: Readonly<{ name: string; parts: readonly ReactNode[] }>) => (
  <div data-ruler={name}>
    {parts.map((part, i) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: parts keep their places
      <div key={i}>{part}</div>
    ))}
  </div>
)
