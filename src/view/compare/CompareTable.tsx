import { useId } from 'react'
import type { PierResult } from '../../core/model/result.ts'
import { type InputRow, inputRows, isPart } from '../../state/compareInputs.ts'
import { type CompareRow, extremesOf } from '../../state/compareRows.ts'
import type { ComparedPier } from '../../state/compareSet.ts'
import { wordsOf } from '../../words/index.ts'
import { useUnits } from '../hooks/usePier.ts'
import { fieldLabel, issueText } from '../../facts/issueWords.ts'
import { cells } from '../cells/cells.tsx'
import { Bullets } from '../kit/Lists.tsx'
import { Changed, End } from './Ends.tsx'
import { pierTitle, settingWords } from '../cells/pierName.ts'

/** A column of the table: a pier, and its place among all that are compared. */
export type ShownPier = Readonly<{ compared: ComparedPier; place: number }>
type Props = Readonly<{ all: readonly ComparedPier[]; shown: readonly ShownPier[]; rows: readonly CompareRow[] }>

const resultOf = ({ pier }: ComparedPier): PierResult | null => pier?.result ?? null

/** A row that would have a best and a worst, but for a pier without a number. */
const lacksEnds = ({ better, number }: CompareRow, results: readonly (PierResult | null)[]): boolean =>
  better !== null && results.some((result) => result && number?.(result).value === null)

const Row = ({ row, all, shown, explains }: Readonly<{ row: CompareRow; explains: boolean }> & Omit<Props, 'rows'>) => {
  const words = wordsOf('compare')
  const { label, why } = words.rows[row.id]
  const Cell = cells[row.id]
  const results = all.map(resultOf)
  const { best, worst } = extremesOf(row, results)
  return (
    <tr data-row={row.id}>
      <th scope='row'>
        <span className='block heavy'>{label}</span>
        <span className='quiet block'>{why}</span>
        {explains && <span className='quiet block'>{words.table.noEnds}</span>}
      </th>
      {shown.map(({ compared, place }) => {
        const result = resultOf(compared)
        return (
          <td key={compared.pick}>
            {result === null ? <span aria-hidden='true'>–</span> : <Cell result={result} />}
            {best.includes(place) && <End which='best' />}
            {worst.includes(place) && <End which='worst' />}
          </td>
        )
      })}
    </tr>
  )
}

const Inputs = ({ all, shown }: Omit<Props, 'rows'>) => {
  const words = wordsOf('compare')
  const { say } = useUnits()
  const built = all.filter(({ pier }) => pier !== null)
  const rows = inputRows(built.flatMap(({ pier }) => pier?.document.spec ?? []))
  const placeIn = (compared: ComparedPier): number => built.indexOf(compared)
  if (rows.length === 0) return null
  const cell = (row: InputRow, compared: ComparedPier) => {
    const found = row.cells[placeIn(compared)]
    const first = row.cells[0]
    if (!found || !first) return <span aria-hidden='true'>–</span>
    if (found.field === null && !isPart(row.path))
      return (
        <span className='quiet light'>
          <span aria-hidden='true'>–</span>
          <span className='spoken'>{words.table.hasNone}</span>
        </span>
      )
    if (!found.differs) return <span>{settingWords(row.path, found, say)}</span>
    return (
      <>
        <span className='block strong'>
          <Changed /> {settingWords(row.path, found, say)}
        </span>
        <span className='quiet light'>{words.table.instead(settingWords(row.path, first, say))}</span>
      </>
    )
  }
  return (
    <tbody className='cmp-inputs' id='cmp-inputs'>
      <tr>
        <th scope='rowgroup' colSpan={shown.length + 1}>
          <span className='block heavy'>{words.table.inputs}</span> <span className='quiet block'>{words.table.inputsWhy}</span>
        </th>
      </tr>
      {rows.map((row) => (
        <tr key={row.path}>
          <th scope='row'>{fieldLabel(row.path)}</th>
          {shown.map(({ compared }) => (
            <td key={compared.pick}>{cell(row, compared)}</td>
          ))}
        </tr>
      ))}
    </tbody>
  )
}

/** Why a method can't be built here: each field to change, in words. */
const Refusals = ({ shown }: Pick<Props, 'shown'>) => {
  const { system } = useUnits()
  if (shown.every(({ compared }) => compared.pier !== null)) return null
  return (
    <tbody>
      <tr>
        <th scope='row' className='block heavy'>
          {wordsOf('compare').column.cannot}
        </th>
        {shown.map(({ compared }) => (
          <td key={compared.pick}>
            <Bullets of={compared.issues.map((issue) => issueText(issue, system))} />
          </td>
        ))}
      </tr>
    </tbody>
  )
}

/** Everything that can be said of each pier, a row a question, and at the end what is set differently. */
export const CompareTable = ({ all, shown, rows }: Props) => {
  const words = wordsOf('compare')
  const id = useId()
  const open = rows.find((row) => lacksEnds(row, all.map(resultOf)))
  return (
    <table className='cmp-table panel' aria-describedby={id}>
      <caption className='spoken' id={id}>
        {words.table.caption}
      </caption>
      <thead className='spoken'>
        <tr>
          <th scope='col'>{words.table.row}</th>
          {shown.map(({ compared }) => (
            <th key={compared.pick} scope='col'>
              {pierTitle(compared)}
            </th>
          ))}
        </tr>
      </thead>
      <Refusals shown={shown} />
      <tbody>
        {rows.map((row) => (
          <Row key={row.id} row={row} all={all} shown={shown} explains={row === open} />
        ))}
      </tbody>
      <Inputs all={all} shown={shown} />
    </table>
  )
}
