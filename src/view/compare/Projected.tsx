import { drawingOf } from '../../core/derive/report/drawingFacts.ts'
import type { PierResult } from '../../core/model/result.ts'
import { contactWords, verdictWords } from '../../facts/said.ts'
import { compareStore } from '../../state/compare.ts'
import { project } from '../../state/compareActions.ts'
import { type CompareRow, extremesOf, pullLinks, touchesOf } from '../../state/compareRows.ts'
import { factsAbout } from '../../state/derived.ts'
import type { ComparedPier } from '../../state/compareSet.ts'
import { type Words, wordsOf } from '../../words/index.ts'
import { useUnits } from '../hooks/usePier.ts'
import { MarkedWord } from '../kit/Mark.tsx'
import { Button } from '../kit/Controls.tsx'
import type { ShownPier } from './CompareTable.tsx'
import { End } from './Ends.tsx'
import { pierName } from '../cells/pierName.ts'

export type ProjectedRowId = keyof Words['compare']['projector']['rows']
/** Rows that can be said in a word or a number, to be read from the back of a room. */
export const isProjected = ({ id }: CompareRow): boolean => Object.hasOwn(wordsOf('compare').projector.rows, id)

/** The answer of one row in a few words. */
const Short = ({ row, result }: Readonly<{ row: CompareRow; result: PierResult | null }>) => {
  const words = wordsOf('compare')
  const { say } = useUnits()
  if (result === null) return words.column.cannot
  if (row.number) {
    const { value, quantity } = row.number(result)
    return value === null ? <MarkedWord name='unverified' word={wordsOf('app').verdicts.unverified} /> : say(value, quantity)
  }
  if (row.id === 'links') {
    const links = pullLinks(result)
    return words.projector.links(links.filter(({ counted }) => counted === 'counted').length, links.length)
  }
  if (row.id === 'touching') {
    const [most] = touchesOf(result)
    return most ? contactWords(most.id) : words.table.noWood
  }
  const whole = drawingOf(factsAbout(result))
  return whole ? verdictWords(whole) : words.table.noDrawing
}

type Props = Readonly<{ all: readonly ComparedPier[]; shown: readonly ShownPier[]; rows: readonly CompareRow[]; at: number }>

/** Under each pier its name and one answer, and at the foot what is being asked: five labels, no more. */
export const Projected = ({ all, shown, rows, at }: Props) => {
  const words = wordsOf('compare')
  const place = Math.min(at, rows.length - 1)
  const row = rows[place]
  if (!row) return null
  const { best, worst } = extremesOf(
    row,
    all.map(({ pier }) => pier?.result ?? null),
  )
  return (
    <>
      <div className='cmp-cards panel over-heavy' style={{ gridTemplateColumns: `repeat(${shown.length}, minmax(0, 1fr))` }}>
        {shown.map(({ compared, place: column }) => (
          <div key={compared.pick} className='cmp-card'>
            <h3 className='strong'>{pierName(compared).title}</h3>
            <p className='cmp-answer heavy'>
              <Short row={row} result={compared.pier?.result ?? null} />
            </p>
            {best.includes(column) && <End which='best' />}
            {worst.includes(column) && <End which='worst' />}
          </div>
        ))}
      </div>
      <nav className='cmp-question over-fine line' aria-label={words.view.rows}>
        <button type='button' aria-label={words.projector.before} disabled={place === 0} onClick={() => project(compareStore, place - 1)}>
          <span aria-hidden='true'>‹</span>
        </button>
        <h2 className='heavy' aria-live='polite'>
          {words.projector.rows[row.id as ProjectedRowId]}
        </h2>
        <button
          type='button'
          aria-label={words.projector.next}
          disabled={place === rows.length - 1}
          onClick={() => project(compareStore, place + 1)}
        >
          <span aria-hidden='true'>›</span>
        </button>
        <Button className='cmp-leave' aria-label={words.projector.leave} onClick={() => project(compareStore, null)}>
          <span aria-hidden='true'>×</span>
        </Button>
      </nav>
    </>
  )
}
