import { Fragment, type ReactNode } from 'react'
import { type WeighedClaim, claimsAbout } from '../../core/derive/evidence.ts'
import type { UnitSystem } from '../../core/units/quantity.ts'
import { type InputRow, inputRows } from '../../state/compareInputs.ts'
import { type CompareRow, rowsFor, voices } from '../../state/compareRows.ts'
import type { ComparedPier } from '../../state/compareSet.ts'
import { type Words, wordsOf } from '../../words/index.ts'
import { pierName, settingWords } from '../cells/pierName.ts'
import type { SayNumber } from '../../core/units/reader.ts'
import { useUnits } from '../hooks/usePier.ts'
import { StandingMark } from '../kit/Mark.tsx'
import { fieldLabel, issueText } from '../../facts/issueWords.ts'
import { cells, isPractice } from '../cells/cells.tsx'
import { CodeWords, OneCode } from './Code.tsx'
import { SvgDrawing } from './SvgDrawing.tsx'
import { shortened } from './blocks.tsx'

type Piers = readonly ComparedPier[]
/** Letters of a name that a column's head has room for. */
const mostTag = 56
export type ComparedFigures = Readonly<{
  sections: readonly (string | null)[]
  bar: string
  legend: string
  /** Addresses of images of the columns as they are seen; null without a 3D picture. Where one pier is seen at a time they are fewer, and none is shown. */
  pictures: readonly (string | null)[] | null
}>

type TableProps = Readonly<{ rows: readonly ReactNode[]; piers: Piers; isFirst: boolean }>

/** The table of the sheet, or those of its rows that stand on one page. */
export const ComparedTable = ({ rows, piers, isFirst }: TableProps) => (
  <table className='paper-compared'>
    <thead>
      <tr>
        <th scope='col'>
          <span className='spoken'>{wordsOf('compare').table.row}</span>
        </th>
        {piers.map((compared, i) => {
          const { title, tag } = pierName(compared)
          return (
            <th key={compared.pick} scope='col'>
              {i + 1} {shortened(title, mostTag)}
              {isFirst && tag && <span className='quiet light block'>{shortened(tag, mostTag)}</span>}
            </th>
          )
        })}
      </tr>
    </thead>
    <tbody>{rows}</tbody>
  </table>
)

/** Sections at one scale, and why a method can't be built. */
const sectionsRow = (piers: Piers, { sections }: ComparedFigures, scale: string, system: UnitSystem): ReactNode => {
  const words = wordsOf('sheet')
  return (
    <tr key='sections' className='paper-beside'>
      <th scope='row'>
        {wordsOf('takeAlong').sheet.section}
        <span className='quiet light block'>
          {words.block.scale} {scale}. {words.comparedNote}
        </span>
      </th>
      {piers.map((compared, i) => {
        const svg = sections[i]
        return (
          <td key={compared.pick}>
            {svg ? (
              <figure>
                <SvgDrawing svg={svg} />
              </figure>
            ) : (
              <p>{compared.issues.map((issue) => issueText(issue, system)).join(' ')}</p>
            )}
          </td>
        )
      })}
    </tr>
  )
}

/** The cutaways as they are seen: the row that is left out first where there is no room. */
const picturesRow = (piers: Piers, pictures: readonly (string | null)[]): ReactNode => {
  const words = wordsOf('sheet')
  return (
    <tr key='pictures' className='paper-cutaways' data-spare=''>
      <th scope='row'>{words.pictures}</th>
      {piers.map((compared, i) => {
        const address = pictures[i]
        return <td key={compared.pick}>{address ? <img src={address} alt={`${words.picture}: ${pierName(compared).title}`} /> : '–'}</td>
      })}
    </tr>
  )
}

const keyRow = (piers: Piers, { legend, bar }: ComparedFigures): ReactNode => (
  <tr key='key'>
    <td colSpan={piers.length + 1}>
      <div className='paper-key ends'>
        <SvgDrawing svg={legend} />
        <SvgDrawing svg={bar} />
      </div>
    </td>
  </tr>
)

/** The code of each pier in its own column. */
const codesRow = (piers: Piers): ReactNode => (
  <tr key='codes'>
    <th scope='row'>
      {wordsOf('sheet').code.title}
      <CodeWords />
    </th>
    {piers.map((compared) => (
      <td key={compared.pick}>{compared.pier ? <OneCode document={compared.pier.document} name={pierName(compared).title} /> : '–'}</td>
    ))}
  </tr>
)

/** A claim and its count once, and the piers that it is made of unless it is of all. */
const Claims = ({ piers }: Readonly<{ piers: Piers }>) => {
  const compare = wordsOf('compare')
  const about = piers.map(({ pier }) => (pier ? claimsAbout(pier.result) : []))
  const all = new Map(about.flat().map((claim): [string, WeighedClaim] => [claim.id, claim]))
  return [...all.values()].map(({ id, inFavour, against }) => {
    const places = about.flatMap((claims, i) => (claims.some((claim) => claim.id === id) ? [i + 1] : []))
    return (
      <Fragment key={id}>
        “{compare.claims[id as keyof Words['compare']['claims']]}” {compare.table.count(inFavour.length, against.length)}
        {places.length < piers.length && ` (${places.join(', ')})`}
        {'. '}
      </Fragment>
    )
  })
}

const resultRow = (row: CompareRow, piers: Piers): ReactNode => {
  const Cell = cells[row.id]
  const results = piers.flatMap(({ pier }) => pier?.result ?? [])
  const [first] = results
  const isAlike = results.length === piers.length && voices(row, results) === 1
  return (
    <tr key={row.id}>
      <th scope='row'>
        {wordsOf('compare').rows[row.id].label} {isPractice(row.id) && <StandingMark standing='common practice' />}
      </th>
      {row.id === 'evidence' ? (
        <td colSpan={piers.length}>
          <Claims piers={piers} />
        </td>
      ) : isAlike && first ? (
        <td colSpan={piers.length} className='paper-alike'>
          <span className='quiet'>{wordsOf('sheet').alike}</span> <Cell result={first} as='paper' />
        </td>
      ) : (
        piers.map((compared) => <td key={compared.pick}>{compared.pier ? <Cell result={compared.pier.result} as='paper' /> : '–'}</td>)
      )}
    </tr>
  )
}

/** What one method alone has to set says nothing beside the others, and has its place on that pier's own sheet. */
const isShared = ({ cells: found }: InputRow): boolean => found.filter(({ field }) => field !== null).length > 1

/** The head of each column names the method already, unless it bears the name that somebody gave it. */
const isSaid = ({ path }: InputRow, piers: Piers): boolean =>
  path === 'fill.kind' && piers.every(({ pick }) => !pick.startsWith('brought:'))

/** An input that differs only in that some piers have no place for it. */
const isMissingOnly = ({ cells: found }: InputRow): boolean => {
  const there = found.filter(({ field }) => field !== null)
  return there.length < found.length && there.every(({ value }) => value === there[0]?.value)
}

/** What is set differently, from the first pier on; what is not as in the first stands out in weight. */
const inputRow = (row: InputRow, piers: Piers, say: SayNumber): ReactNode => {
  const built = piers.filter(({ pier }) => pier !== null)
  return (
    <tr key={row.path}>
      <th scope='row'>{fieldLabel(row.path)}</th>
      {piers.map((compared) => {
        const cell = row.cells[built.indexOf(compared)]
        const said = cell ? settingWords(row.path, cell, say) : '–'
        return <td key={compared.pick}>{cell?.differs ? <b>{said}</b> : said}</td>
      })}
    </tr>
  )
}

/** Inputs that some piers have no place for, in one row: each pier's place, then what it lacks. */
const missingRow = (rows: readonly InputRow[], piers: Piers): ReactNode => {
  const built = piers.filter(({ pier }) => pier !== null)
  return (
    <tr key='missing'>
      <th scope='row'>{wordsOf('sheet').lacks}</th>
      <td colSpan={piers.length}>
        {piers.map((compared, i) => {
          const names = rows.flatMap(({ path, cells: found }) => (found[built.indexOf(compared)]?.field === null ? [fieldLabel(path)] : []))
          return (
            names.length > 0 && (
              <Fragment key={compared.pick}>
                <b>{i + 1}</b> {names.join(', ')}.{' '}
              </Fragment>
            )
          )
        })}
      </td>
    </tr>
  )
}

/** Every row of the comparison: sections, inputs that differ, then what can be said of each. */
export const useComparedRows = (piers: Piers, figures: ComparedFigures, scale: string): readonly ReactNode[] => {
  const { say, system } = useUnits()
  const results = piers.flatMap(({ pier }) => pier?.result ?? [])
  const inputs = inputRows(piers.flatMap(({ pier }) => pier?.document.spec ?? [])).filter((row) => isShared(row) && !isSaid(row, piers))
  const missing = inputs.filter(isMissingOnly)
  return [
    sectionsRow(piers, figures, scale, system),
    keyRow(piers, figures),
    ...(figures.pictures?.length === piers.length ? [picturesRow(piers, figures.pictures)] : []),
    ...inputs.filter((row) => !isMissingOnly(row)).map((row) => inputRow(row, piers, say)),
    ...(missing.length > 0 ? [missingRow(missing, piers)] : []),
    // How the checks stand is told on each pier's own sheet: there is no room for it here.
    ...rowsFor(results)
      .filter(({ id }) => id !== 'status')
      .map((row) => resultRow(row, piers)),
    codesRow(piers),
  ]
}
