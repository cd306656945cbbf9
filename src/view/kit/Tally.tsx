import './parts.css'
import { useId } from 'react'
import type { TallyCounts } from '../../state/goneBy.ts'
import { wordsOf } from '../../words/index.ts'
import './tally.css'

const states = ['sound', 'open', 'gone'] as const
type State = (typeof states)[number]

const [wide, high] = [14, 32]
/** Level of the ground on a little post. */
const ground = 19

const shapes: Readonly<Record<State, string>> = {
  sound: 'M4 2H10V29H4Z',
  open: 'M4 2H10V29H4Z',
  gone: `M4 29V${ground - 1}L6 ${ground - 4}L7.5 ${ground}L10 ${ground - 3}V29Z`,
}

/** So many posts of twenty in each state by a year: sound, left open by the range, no longer sound; in one row or in two. */
export const Tally = ({ counts, year, rows = 2 }: Readonly<{ counts: TallyCounts | null; year: number; rows?: 1 | 2 }>) => {
  const words = wordsOf('time').years.tally
  const id = useId().replace(/[^a-z0-9]/gi, '')
  if (counts === null) return <p className='tally stack small tally-none'>{words.none}</p>
  const all = states.flatMap((state) => Array.from({ length: counts[state] }, () => state))
  const shown = states.filter((state) => counts[state] > 0)
  const perRow = all.length / rows
  return (
    <div className='tally stack small'>
      <p className='strong'>{words.of(String(all.length), String(year))}</p>
      <svg
        preserveAspectRatio='xMinYMid'
        viewBox={`0 0 ${perRow * wide} ${rows * high}`}
        role='img'
        aria-label={shown.map((state) => words[state](String(counts[state]))).join(', ')}
      >
        <defs>
          <pattern id={`${id}open`} width='4' height='4' patternUnits='userSpaceOnUse' patternTransform='rotate(45)'>
            <rect width='4' height='4' className='fill-paper' />
            <path d='M0 0V4' className='line-ink tally-hatch' />
          </pattern>
        </defs>
        {(rows === 1 ? [0] : [0, 1]).map((row) => (
          <path key={row} className='line-mid' d={`M0 ${row * high + ground}H${perRow * wide}`} />
        ))}
        {all.map((state, i) => (
          <path
            // biome-ignore lint/suspicious/noArrayIndexKey: a post is its place
            key={i}
            className={`tally-${state}`}
            d={shapes[state]}
            fill={state === 'open' ? `url(#${id}open)` : undefined}
            transform={`translate(${(i % perRow) * wide} ${Math.floor(i / perRow) * high})`}
          />
        ))}
      </svg>
      <ul aria-hidden='true'>
        {shown.map((state) => (
          <li key={state}>{words[state](String(counts[state]))}</li>
        ))}
        <li className='quiet'>{year > counts.until ? words.ends(String(counts.until)) : words.limit}</li>
      </ul>
    </div>
  )
}
