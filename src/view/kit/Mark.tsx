import type { VerdictMark } from '../../core/model/fact.ts'
import type { Standing } from '../../core/model/worked.ts'
import { wordsOf } from '../../words/index.ts'

/** Silhouettes that differ, so that a verdict reads without colour. The word always stands beside it. */
export type MarkName = VerdictMark | 'warning'

const shapes: Readonly<Record<MarkName, React.ReactNode>> = {
  meets: (
    <>
      <circle cx='8' cy='8' r='7' fill='currentColor' />
      <path d='M4.5 8.2 7 10.7 11.6 5.6' fill='none' stroke='var(--panel)' strokeWidth='1.8' />
    </>
  ),
  short: (
    <>
      <path d='M8 1 15.5 14.5H.5Z' fill='currentColor' />
      <path d='M8 5.6v4.2M8 11.2v1.6' fill='none' stroke='var(--panel)' strokeWidth='1.6' />
    </>
  ),
  counted: <rect x='1' y='1' width='14' height='14' fill='currentColor' />,
  unverified: (
    <>
      <path d='M8 .9 15.1 8 8 15.1.9 8Z' fill='none' stroke='currentColor' strokeWidth='1.4' strokeDasharray='2.4 1.5' />
      <path d='M6.2 6.5c.1-2.5 3.7-2.4 3.7 0 0 1.4-1.8 1.4-1.9 2.9M8 10.7v1.3' fill='none' stroke='currentColor' strokeWidth='1.3' />
    </>
  ),
  unneeded: (
    <>
      <circle cx='8' cy='8' r='6.4' fill='none' stroke='currentColor' strokeWidth='1.3' />
      <path d='M4.6 8h6.8' stroke='currentColor' strokeWidth='1.6' />
    </>
  ),
  judgement: (
    <>
      <rect x='1.7' y='1.7' width='12.6' height='12.6' fill='none' stroke='currentColor' strokeWidth='1.3' />
      <path d='M1.7 14.3V1.7h6.3v12.6Z' fill='currentColor' />
    </>
  ),
  bound: (
    <>
      <path d='M1.5 3.2h13' stroke='currentColor' strokeWidth='1.8' />
      <path d='M8 14.5V6.4M4.6 9.6 8 6l3.4 3.6' fill='none' stroke='currentColor' strokeWidth='1.4' />
    </>
  ),
  warning: (
    <>
      <path d='M8 1.4 15 14.2H1Z' fill='none' stroke='currentColor' strokeWidth='1.3' />
      <path d='M8 6v4M8 11.4V13' fill='none' stroke='currentColor' strokeWidth='1.5' />
    </>
  ),
}

export const Mark = ({ name }: { name: MarkName }) => (
  <svg className={`mark mark-${name}`} viewBox='0 0 16 16' width='16' height='16' aria-hidden='true' focusable='false'>
    {shapes[name]}
  </svg>
)

/** Shape and word together; the word alone where nothing was held against anything. */
export const MarkedWord = ({ name, word }: { name: MarkName | null; word: string }) =>
  name === null ? (
    word
  ) : (
    <span className={`verdict mark-${name}`}>
      <Mark name={name} />
      <span>{word}</span>
    </span>
  )

/** A mark and a word beside every number that was not read from its source. */
export const StandingMark = ({ standing }: { standing: Standing | null }) => {
  const { mark, meaning } = wordsOf('standings')[standing ?? 'read']
  if (mark === null) return null
  return (
    <span className='standing quiet light unbroken'>
      <span aria-hidden='true'>†</span> {mark}
      <span className='spoken'>: {meaning}</span>
    </span>
  )
}

/** Stands beside every number that rests on an estimate of the loads. */
export const EstimateMark = ({ shown = true }: { shown?: boolean }) =>
  shown && <span className='estimate-mark quiet unbroken'>{wordsOf('app').loads.mark}</span>
