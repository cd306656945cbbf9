import { type ReactNode, useLayoutEffect, useRef, useState } from 'react'
import type { ComparedPier } from '../../state/compareSet.ts'
import { Cautions, Questions } from './blocks.tsx'
import { type ComparedFigures, ComparedTable, useComparedRows } from './ComparedTable.tsx'
import { gap, heightsOf, largestThatFits, letterSizes, room } from './letterSize.ts'
import { type Packed, packed } from './packed.ts'
import { Paper, PaperColumns, type PaperFacts, PaperTitle, Ruled } from './Paper.tsx'
import { shared } from './shared.ts'

type Props = Readonly<{ piers: readonly ComparedPier[]; facts: PaperFacts; figures: ComparedFigures; sources: ReactNode }>

/** Rows of the table by page, then the columns of the tail: on the last page under the rows, or on pages of their own. */
type Laid = Readonly<{ rows: readonly (readonly number[])[]; tail: Packed; isUnder: boolean; letter: number; count: number }>

function layOut(element: HTMLElement, letter: number, hasSpare: boolean): Laid {
  element.style.setProperty('--letter', `${letter}pt`)
  const of = (what: string): number[] => heightsOf(element.querySelectorAll(what))
  const head = of('[data-ruler="rows"] thead')[0] ?? 0
  const rows: number[][] = [[]]
  let left = room - head
  const spare = hasSpare
    ? -1
    : [...element.querySelectorAll('[data-ruler="rows"] tbody > tr')].findIndex((row) => row.matches('[data-spare]'))
  of('[data-ruler="rows"] tbody > tr').forEach((height, i) => {
    if (i === spare) return
    if (height > left && (rows.at(-1)?.length ?? 0) > 0) {
      rows.push([])
      left = room - head
    }
    rows.at(-1)?.push(i)
    left -= height
  })
  const foot = of('[data-ruler="foot"] > *').reduce((sum, height) => sum + height + gap, 0)
  const parts = of('[data-ruler="tail"] > *')
  const under = shared(parts, [left - foot - gap, left - foot - gap], gap)
  const tail = under ? [under] : packed(parts, room - foot, gap)
  return { rows, tail, isUnder: under !== null, letter, count: rows.length + (under ? 0 : tail.length) }
}

/** Pages that a comparison may take. */
const most = 2

/** Two to four piers on as few pages as can be: every method shown, every row, none picked out. */
export const ComparedPages = ({ piers, facts, figures, sources }: Props) => {
  const ruler = useRef<HTMLDivElement>(null)
  const [laid, setLaid] = useState<Laid | null>(null)
  const results = piers.flatMap(({ pier }) => pier?.result ?? [])
  const rows = useComparedRows(piers, figures, facts.scale)
  const parts: readonly ReactNode[] = [<Questions key='ask' results={results} />, <Cautions key='cautions' />]
  const foot = [sources, <PaperTitle key='title' facts={facts} />]
  // biome-ignore lint/correctness/useExhaustiveDependencies: laid out anew when what is measured has changed
  useLayoutEffect(() => {
    const element = ruler.current
    if (!element) return
    const fitting = (hasSpare: boolean) =>
      largestThatFits(
        letterSizes.map((letter) => layOut(element, letter, hasSpare)),
        most,
      )
    const whole = fitting(true)
    setLaid(whole && whole.count > most ? fitting(false) : whole)
  }, [piers, facts])
  if (laid === null)
    return (
      <div ref={ruler} className='paper-ruler ' aria-hidden='true'>
        <div data-ruler='rows'>
          <ComparedTable rows={rows} piers={piers} isFirst />
        </div>
        <div data-ruler='foot'>{foot}</div>
        <Ruled name='tail' parts={parts} />
      </div>
    )
  const tail = (page: Packed[number], isLast: boolean) => (
    <>
      <PaperColumns columns={page} parts={parts} />
      {isLast && foot}
    </>
  )
  return (
    <>
      {laid.rows.map((places, page) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a page is its place
        <Paper key={page} facts={facts} at={page + 1} of={laid.count} letter={laid.letter}>
          <ComparedTable rows={places.flatMap((i) => rows[i] ?? [])} piers={piers} isFirst={page === 0} />
          {laid.isUnder && page === laid.rows.length - 1 && laid.tail[0] && tail(laid.tail[0], true)}
        </Paper>
      ))}
      {!laid.isUnder &&
        laid.tail.map((page, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a page is its place
          <Paper key={i} facts={facts} at={laid.rows.length + i + 1} of={laid.count} letter={laid.letter}>
            {tail(page, i === laid.tail.length - 1)}
          </Paper>
        ))}
    </>
  )
}
