import type { ApartWhy } from '../../../core/model/timeResult.ts'
import { shownRows } from '../../../core/derive/life/evidenceShown.ts'
import { wordsOf } from '../../../words/index.ts'
import { evidenceText, whyApartText } from '../../../facts/lifeWords.ts'
import { yearsOf } from '../../../facts/timeWords.ts'
import { StandingMark } from '../../kit/Mark.tsx'

const last = 60
const [left, right] = [4, 344]
/** Place of a year; past the end of the rule it stays at the end, where an arrow says so. */
const x = (year: number) => left + (Math.min(year, last) / last) * (right - left)

/** Years from one to another as a bar; `isOpen`: it goes on, nobody saw its end. */
const YearBar = ({ low, high, isOpen }: Readonly<{ low: number; high: number; isOpen: boolean }>) => (
  <svg className='drawing years-bar' viewBox='0 0 360 14' aria-hidden='true'>
    <line className='line-rule' x1={left} x2={right} y1='7' y2='7' />
    <rect
      className='band'
      data-open={isOpen || undefined}
      x={x(low) - (high - low < 1 ? 2 : 0)}
      y='2'
      width={Math.max(4, x(high) - x(low))}
      height='10'
    />
    {(isOpen || high > last) && <path className='fill-ink' d={`M${x(high) + 3} 2l7 5l-7 5z`} />}
  </svg>
)

/** The rule over the bars. */
export const YearRule = () => {
  const years = wordsOf('years')
  return (
    <svg className='drawing' viewBox='0 0 360 24' role='img' aria-label={years.life.scale}>
      <line className='line-ink' x1={left} x2={right} y1='20' y2='20' />
      {[0, 10, 20, 30, 40, 50, 60].map((year) => (
        <g key={year}>
          <line className='line-ink' x1={x(year)} x2={x(year)} y1='16' y2='20' />
          <text x={x(year)} y='12' textAnchor={year === 0 ? 'start' : year === last ? 'end' : 'middle'}>
            {year === last ? `${year} ${years.life.unit}` : year}
          </text>
        </g>
      ))}
    </svg>
  )
}

const whyText = (why: ApartWhy | undefined): string => (why === undefined ? '' : whyApartText(why))

/** Rows of evidence, each with why it is no part of a band, if it is none, and with its place, its limits, and its life on the rule; a time that was only watched is drawn open. */
export const EvidenceBars = ({
  title,
  rows: told,
}: Readonly<{ title: string; rows: readonly Readonly<{ row: string; why?: ApartWhy }>[] }>) => {
  const whys = new Map(told.map(({ row, why }) => [row, why]))
  const rows = shownRows([...whys.keys()])
  if (rows.length === 0) return null
  return (
    <>
      <h4>{title}</h4>
      <ul className='stack'>
        {rows.map(({ id, standing, span }) => (
          <li key={id}>
            {evidenceText(id)} {whyText(whys.get(id))} <StandingMark standing={standing} />
            {span && <YearBar low={yearsOf(span.low)} high={yearsOf(span.high)} isOpen={span.isOpen} />}
          </li>
        ))}
      </ul>
    </>
  )
}
