import { dotsOf, outOf } from '../../../core/uncertainty/summary.ts'
import type { SpreadOfUplift } from '../../../core/uncertainty/sureResult.ts'
import { wordsOf } from '../../../words/index.ts'
import { useUnits } from '../../hooks/usePier.ts'
import { roundValues, straightScale, wholeNumber } from './sureFigures.ts'

const width = 300
const columns = 30
const cell = width / columns
const all = 100
const labelRow = 14

type Quantiles = NonNullable<SpreadOfUplift['quantiles']>

/**
 * Left and right end of the chart [N]: the tries, what was entered, and a load that is not far off. A load on the chart stands between
 * two columns of dots.
 */
function chartEnds({ allowable, asEntered }: SpreadOfUplift, demand: number | null): readonly [number, number] {
  const least = allowable[0] ?? asEntered
  const most = allowable[allowable.length - 1] ?? asEntered
  const reach = Math.max(most - least, 0.02 * Math.abs(most), 1)
  const isNear = demand !== null && demand > least - reach && demand < most + reach
  const shown = [least, most, asEntered, ...(isNear ? [demand] : [])]
  const [from, to] = [Math.min(...shown) - 0.06 * reach, Math.max(...shown) + 0.06 * reach]
  if (!isNear) return [from, to]
  const column = (to - from) / (columns - 1)
  const left = demand - Math.ceil((demand - from) / column) * column
  return [left, left + columns * column]
}

/** Room that a label takes [px of the drawing]. */
const labelWidth = 112

/** Where a label begins or ends so that it stays on the chart: to one side of its line, or over it. */
const placed = (x: number, side: 'left' | 'right' | 'over'): Readonly<{ x: number; textAnchor: 'start' | 'middle' | 'end' }> => {
  if (side === 'left') return { x: Math.max(x, labelWidth), textAnchor: 'end' }
  if (side === 'right') return { x: Math.min(x, width - labelWidth), textAnchor: 'start' }
  return { x: Math.min(Math.max(x, labelWidth / 2), width - labelWidth / 2), textAnchor: 'middle' }
}

/** A hundred dots heaped over what the tries hold, with the range that 900 in 1,000 lie in, and the load. */
export const DotPlot = ({ result, quantiles }: { result: SpreadOfUplift; quantiles: Quantiles }) => {
  const sure = wordsOf('sure')
  const { say, bare, system } = useUnits()
  const { allowable, asEntered, study, without } = result
  const demand = study.demand ?? null
  const [from, to] = chartEnds(result, demand)
  const [counted = 0, ...others] = outOf(all, [allowable.length, ...without.map(({ count }) => count)])
  const dots = dotsOf(allowable, counted, from, (to - from) / columns)
  const highest = dots.reduce((most, { level }) => Math.max(most, level + 1), 1)
  const rows = Math.max(highest, 6)
  const top = 2 * labelRow + 2
  const floor = top + rows * cell
  const { at } = straightScale(from, to, 0, width)
  const isOnChart = demand !== null && demand >= from && demand <= to
  const hollow = others.reduce((sum, count) => sum + count, 0)
  const hollowTop = floor + 54
  const height = hollow > 0 ? hollowTop + Math.ceil(hollow / columns) * cell + 2 : floor + 50
  const { low, middle, high } = quantiles
  const isLower = demand !== null && demand < asEntered
  const enteredSide = isOnChart ? (isLower ? 'right' : 'left') : 'over'
  return (
    <svg
      className='sure-chart drawing'
      viewBox={`0 0 ${width} ${height}`}
      role='img'
      aria-label={`${sure.chart.name}. ${sure.chart.spoken(say(low, 'force'), say(middle, 'force'), say(high, 'force'))}`}
    >
      <rect className='fill-pale' x={at(low)} y={top} width={Math.max(at(high) - at(low), 1)} height={floor - top} />
      {dots.map(({ value, column, level }, i) => {
        const x = (column + 0.5) * cell
        const y = floor - (level + 0.5) * cell
        const r = 0.42 * cell
        const key = `${column}-${level}-${i}`
        return demand !== null && value < demand ? (
          <path key={key} className='fill-short' d={`M${x} ${y - r}L${x + r} ${y + 0.8 * r}H${x - r}Z`} />
        ) : (
          <circle key={key} className='fill-mid' cx={x} cy={y} r={r} />
        )
      })}
      <path className='fill-none line-mid' d={`M0 ${floor}H${width}`} />
      {roundValues(from, to, 'force', system, 4).map((value) => (
        <g key={value}>
          <path className='fill-none line-mid' d={`M${at(value)} ${floor}v4`} />
          <text x={Math.min(Math.max(at(value), 22), width - 22)} y={floor + 15} textAnchor='middle'>
            {say(value, 'force')}
          </text>
        </g>
      ))}
      <path className='fill-none line-ink dashed' d={`M${at(asEntered)} ${2 * labelRow}V${floor}`} />
      <text className='fill-ink strong' {...placed(at(asEntered), enteredSide)} y={2 * labelRow - 3}>
        {sure.chart.entered} {say(asEntered, 'force')}
      </text>
      {demand !== null && isOnChart && (
        <>
          <path className='fill-none line-short bold' d={`M${at(demand)} ${labelRow}V${floor + 4}`} />
          <text className='fill-short strong' {...placed(at(demand), isLower ? 'left' : 'right')} y={labelRow - 3}>
            {sure.chart.load} {say(demand, 'force')}
          </text>
        </>
      )}
      {demand !== null && !isOnChart && (
        <text className='fill-short strong' x={demand < from ? 0 : width} y={labelRow - 3} textAnchor={demand < from ? 'start' : 'end'}>
          {demand < from ? '← ' : ''}
          {sure.chart.beyond(say(demand, 'force'))}
          {demand > to ? ' →' : ''}
        </text>
      )}
      <path
        className='fill-none line-mid'
        d={`M${at(low)} ${floor + 24}v10M${at(high)} ${floor + 24}v10M${at(low)} ${floor + 29}H${at(high)}`}
      />
      <text className='fill-ink strong' {...placed((at(low) + at(high)) / 2, 'over')} y={floor + 46}>
        {bare(low, 'force')}–{say(high, 'force')}
      </text>
      {Array.from({ length: hollow }, (_, i) => (
        <circle
          // biome-ignore lint/suspicious/noArrayIndexKey: rings are all alike and never change places
          key={i}
          className='fill-none line-edge'
          cx={((i % columns) + 0.5) * cell}
          cy={hollowTop + (Math.floor(i / columns) + 0.5) * cell}
          r={0.36 * cell}
        />
      ))}
    </svg>
  )
}

/** What the marks of the chart mean, and its numbers as a table. */
export const DotPlotNotes = ({ result, quantiles }: { result: SpreadOfUplift; quantiles: Quantiles }) => {
  const sure = wordsOf('sure')
  const { say } = useUnits()
  const { study, without, asEntered } = result
  const rows = [
    ['50 in 1,000', quantiles.low],
    ['500 in 1,000', quantiles.middle],
    ['950 in 1,000', quantiles.high],
  ] as const
  return (
    <>
      <p className='quiet'>
        {sure.chart.dots(wholeNumber(study.samples / all))}
        {study.demand != null && ` ${sure.chart.shortDots}`}
        {without.length > 0 && ` ${sure.chart.hollow}`}
      </p>
      <details className='sure-more'>
        <summary className='arrowed underlined'>{sure.chart.table}</summary>
        <table className='grid'>
          <thead>
            <tr>
              <th scope='col'>{sure.chart.share}</th>
              <th scope='col'>{sure.chart.holds}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(([share, value]) => (
              <tr key={share}>
                <th scope='row'>{share}</th>
                <td className='number'>{say(value, 'force')}</td>
              </tr>
            ))}
            <tr>
              <th scope='row'>{sure.asEntered}</th>
              <td className='number'>{say(asEntered, 'force')}</td>
            </tr>
          </tbody>
        </table>
      </details>
    </>
  )
}
