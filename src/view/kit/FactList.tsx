import type { ReactNode } from 'react'
import type { VerdictMark } from '../../core/model/fact.ts'
import { grouped } from '../../facts/firstWords.ts'
import { Mark } from './Mark.tsx'

/** A fact in a list of several: how it stands, and why. */
export type Listed = Readonly<{ id: string; name: string; mark: VerdictMark | null; word: string; why: string; more?: ReactNode }>

/** What has to be told first. */
const order: readonly (VerdictMark | null)[] = ['short', 'unverified', 'judgement', 'counted', 'meets']

/** Facts one under the other, each with its reason one tap away; on paper each word once, with all that it is true of. */
export const FactList = ({ of, as }: Readonly<{ of: readonly Listed[]; as: 'cell' | 'paper' }>) =>
  as === 'paper' ? (
    grouped(
      of.toSorted((a, b) => order.indexOf(a.mark) - order.indexOf(b.mark)),
      ({ word }) => word,
    ).map(([word, list]) => (
      <p key={word}>
        {list[0]?.mark && <Mark name={list[0].mark} />} <b>{word}:</b> {list.map(({ name }) => name).join(', ')}
      </p>
    ))
  ) : (
    <ul className='cmp-links'>
      {of.map(({ id, name, mark, word, why, more }) => (
        <li key={id}>
          <details>
            <summary className='opens'>
              {mark && <Mark name={mark} />}
              <span>
                {name} <span className={`small unbroken mark-${mark}`}>{word}</span>
              </span>
            </summary>
            <p>{why}</p>
            {more}
          </details>
        </li>
      ))}
    </ul>
  )
