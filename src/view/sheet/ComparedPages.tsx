import { type ReactNode, useLayoutEffect, useRef, useState } from 'react'
import { type InputRow, inputRows } from '../../state/compareInputs.ts'
import { type CompareRow, rowsFor } from '../../state/compareRows.ts'
import type { ComparedPier } from '../../state/compareSet.ts'
import { compare } from '../../text/en/compare.ts'
import { sheet as words } from '../../text/en/sheet.ts'
import { cells } from '../compare/cells.tsx'
import { pierName } from '../compare/pierName.ts'
import { valueWords } from '../compare/valueWords.ts'
import { type Say, useUnits } from '../hooks/useUnits.ts'
import { fieldLabel, issueText } from '../panels/issueText.ts'
import { Cautions, Questions } from './blocks.tsx'
import { Codes } from './Code.tsx'
import { Drawn } from './Drawn.tsx'
import { gap, heightsOf, largestThatFits, letterSizes, room } from './letterSize.ts'
import { type Packed, packed } from './packed.ts'
import { Paper, type PaperFacts, PaperTitle } from './Paper.tsx'

export type ComparedFigures = Readonly<{ sections: readonly (string | null)[]; bar: string }>
type Props = Readonly<{ piers: readonly ComparedPier[]; facts: PaperFacts; figures: ComparedFigures; sources: ReactNode }>

/** Names, sections at one scale, and why a method can't be built. */
const Sections = ({ piers, figures }: Pick<Props, 'piers' | 'figures'>) => {
  const { system } = useUnits()
  return (
    <div>
      <div className='paper-beside'>
        {piers.map((compared, i) => {
          const { title, tag } = pierName(compared)
          const svg = figures.sections[i]
          return (
            <figure key={compared.pick}>
              <figcaption>
                <b>{title}</b>
                {tag && <span>{tag}</span>}
              </figcaption>
              {svg ? <Drawn svg={svg} /> : <p>{compared.issues.map((issue) => issueText(issue, system)).join(' ')}</p>}
            </figure>
          )
        })}
      </div>
      <Drawn svg={figures.bar} />
      <p className='paper-quiet'>{words.comparedNote}</p>
    </div>
  )
}

/** On paper nothing opens. */
const still = (table: HTMLTableElement | null): void => {
  for (const summary of table?.querySelectorAll('summary') ?? []) summary.tabIndex = -1
}

const Rows = ({ rows, piers }: Readonly<{ rows: readonly ReactNode[]; piers: readonly ComparedPier[] }>) => (
  <table ref={still} className='paper-compared'>
    <thead>
      <tr>
        <th scope='col'>{compare.table.row}</th>
        {piers.map((compared) => (
          <th key={compared.pick} scope='col'>
            {pierName(compared).title}
          </th>
        ))}
      </tr>
    </thead>
    <tbody>{rows}</tbody>
  </table>
)

const resultRow = (row: CompareRow, piers: readonly ComparedPier[]): ReactNode => {
  const Cell = cells[row.id]
  return (
    <tr key={row.id}>
      <th scope='row'>{compare.rows[row.id].label}</th>
      {piers.map((compared) => (
        <td key={compared.pick}>{compared.pier ? <Cell result={compared.pier.result} /> : '–'}</td>
      ))}
    </tr>
  )
}

/** What one method alone has to set says nothing beside the others, and has its place on that pier's own sheet. */
const isShared = ({ cells: found }: InputRow): boolean => found.filter(({ field }) => field !== null).length > 1

/** What is set differently, from the first pier on; what is not as in the first stands out in weight. */
const inputRow = (row: InputRow, piers: readonly ComparedPier[], say: Say): ReactNode => {
  const built = piers.filter(({ pier }) => pier !== null)
  return (
    <tr key={row.path}>
      <th scope='row'>{fieldLabel(row.path)}</th>
      {piers.map((compared) => {
        const cell = row.cells[built.indexOf(compared)]
        const said = cell ? valueWords(row.path, cell, say) : '–'
        return <td key={compared.pick}>{cell?.differs ? <b>{said}</b> : said}</td>
      })}
    </tr>
  )
}

/** Rows of the table by page, then the columns of the tail: on the last page under the rows, or on pages of their own. */
type Laid = Readonly<{ rows: readonly (readonly number[])[]; tail: Packed; isUnder: boolean; letter: number; count: number }>

function layOut(element: HTMLElement, letter: number): Laid {
  element.style.setProperty('--letter', `${letter}pt`)
  const top = heightsOf(element.querySelectorAll('[data-ruler="top"]'))[0] ?? 0
  const head = heightsOf(element.querySelectorAll('[data-ruler="rows"] thead'))[0] ?? 0
  const heights = heightsOf(element.querySelectorAll('[data-ruler="rows"] tbody > tr'))
  const rows: number[][] = [[]]
  let left = room - top - head - gap
  heights.forEach((height, i) => {
    if (height > left && (rows.at(-1)?.length ?? 0) > 0) {
      rows.push([])
      left = room - head
    }
    rows.at(-1)?.push(i)
    left -= height
  })
  const parts = heightsOf(element.querySelector('[data-ruler="tail"]')?.children ?? [])
  const under = packed(parts, left - 2 * gap, gap)
  const isUnder = under.length === 1
  const tail = isUnder ? under : packed(parts, room, gap)
  return { rows, tail, isUnder, letter, count: rows.length + (isUnder ? 0 : tail.length) }
}

/** Two to four piers on as few pages as can be: every method shown, every row, none picked out. */
export const ComparedPages = ({ piers, facts, figures, sources }: Props) => {
  const ruler = useRef<HTMLDivElement>(null)
  const [laid, setLaid] = useState<Laid | null>(null)
  const results = piers.flatMap(({ pier }) => pier?.result ?? [])
  const { say } = useUnits()
  const rows = [
    ...inputRows(piers.flatMap(({ pier }) => pier?.document.spec ?? []))
      .filter(isShared)
      .map((row) => inputRow(row, piers, say)),
    ...rowsFor(results).map((row) => resultRow(row, piers)),
  ]
  const parts: readonly ReactNode[] = [
    <Questions key='ask' results={results} />,
    <Cautions key='cautions' />,
    <Codes
      key='code'
      piers={piers.flatMap((compared) => (compared.pier ? [{ document: compared.pier.document, name: pierName(compared).title }] : []))}
    />,
    <PaperTitle key='title' facts={facts} />,
    sources,
  ]
  // biome-ignore lint/correctness/useExhaustiveDependencies: laid out anew when what is measured has changed
  useLayoutEffect(() => {
    const element = ruler.current
    if (element)
      setLaid(
        largestThatFits(
          letterSizes.map((letter) => layOut(element, letter)),
          2,
        ),
      )
  }, [piers, facts])
  if (laid === null)
    return (
      <div ref={ruler} className='paper-ruler paper-ruler-wide' aria-hidden='true'>
        <div data-ruler='top'>
          <Sections piers={piers} figures={figures} />
        </div>
        <div data-ruler='rows'>
          <Rows rows={rows} piers={piers} />
        </div>
        <div data-ruler='tail'>
          {parts.map((part, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: parts keep their places
            <div key={i}>{part}</div>
          ))}
        </div>
      </div>
    )
  const columns = (page: Packed[number]) => (
    <div className='paper-columns'>
      {page.map((column) => (
        <div key={column[0]}>{column.map((i) => parts[i])}</div>
      ))}
    </div>
  )
  return (
    <>
      {laid.rows.map((places, page) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a page is its place
        <Paper key={page} facts={facts} at={page + 1} of={laid.count} letter={laid.letter}>
          {page === 0 && <Sections piers={piers} figures={figures} />}
          <Rows rows={places.flatMap((i) => rows[i] ?? [])} piers={piers} />
          {laid.isUnder && page === laid.rows.length - 1 && laid.tail[0] && columns(laid.tail[0])}
        </Paper>
      ))}
      {!laid.isUnder &&
        laid.tail.map((page, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a page is its place
          <Paper key={i} facts={facts} at={laid.rows.length + i + 1} of={laid.count} letter={laid.letter}>
            {columns(page)}
          </Paper>
        ))}
    </>
  )
}
