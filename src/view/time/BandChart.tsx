import { useEffect, useRef } from 'react'
import { player } from './player.ts'

export type BandPoint = Readonly<{ at: number; low: number; high: number }>
type Props = Readonly<{
  /** What it shows, for a reader who can't see it. */
  name: string
  points: readonly BandPoint[]
  /** Last place on the axis [days, years] and how far its numbers stand apart. */
  last: number
  every: number
  unit: string
  /** Place on show. */
  at: number
  /** A share marked across, 0..1; and the places between which it is reached. */
  mark?: Readonly<{ share: number; from: number | null; to: number | null }> | null
}>

const [width, height] = [340, 176]
const plot = { left: 42, right: 330, top: 10, bottom: 146 }
const shares = [0, 0.25, 0.5, 0.75, 1]

/** A band of a share over time, with the moment as a line that moves with every frame that is played. */
export const BandChart = ({ name, points, last, every, unit, at, mark = null }: Props) => {
  const needle = useRef<SVGLineElement>(null)
  const top = Math.max(1, ...points.map(({ high }) => high))
  const x = (place: number): number => plot.left + (place / last) * (plot.right - plot.left)
  const y = (share: number): number => plot.bottom - (share / top) * (plot.bottom - plot.top)
  useEffect(() => {
    const move = (place: number): void => {
      const line = needle.current
      if (!line) return
      const to = plot.left + (place / last) * (plot.right - plot.left)
      line.x1.baseVal.value = to
      line.x2.baseVal.value = to
    }
    move(at)
    return player.listen(move)
  }, [at, last])
  const edge = (side: 'low' | 'high'): string => points.map((point) => `${x(point.at).toFixed(1)} ${y(point[side]).toFixed(1)}`).join('L')
  const back = points
    .map((point) => `${x(point.at).toFixed(1)} ${y(point.low).toFixed(1)}`)
    .reverse()
    .join('L')
  const now = points.reduce<BandPoint | null>(
    (best, point) => (best === null || Math.abs(point.at - at) < Math.abs(best.at - at) ? point : best),
    null,
  )
  return (
    <svg className='time-chart' viewBox={`0 0 ${width} ${height}`} role='img' aria-label={name}>
      {shares.map((share) => (
        <g key={share}>
          <line className='time-grid' x1={plot.left} x2={plot.right} y1={y(share)} y2={y(share)} />
          <text x={plot.left - 6} y={y(share) + 4} textAnchor='end'>
            {Math.round(share * 100)}%
          </text>
        </g>
      ))}
      {Array.from({ length: Math.floor(last / every) + 1 }, (_, i) => i * every).map((place) => (
        <g key={place}>
          <line className='time-tick' x1={x(place)} x2={x(place)} y1={plot.bottom} y2={plot.bottom + 5} />
          <text x={x(place)} y={plot.bottom + 19} textAnchor='middle'>
            {place === 0 ? `0 ${unit}` : place}
          </text>
        </g>
      ))}
      {mark && mark.from !== null && (
        <rect
          className='time-span'
          x={x(mark.from)}
          y={plot.top}
          width={Math.max(2, x(mark.to ?? last) - x(mark.from))}
          height={plot.bottom - plot.top}
        />
      )}
      {points.length > 1 && <path className='time-band' d={`M${edge('high')}L${back}Z`} />}
      {mark && <line className='time-mark' x1={plot.left} x2={plot.right} y1={y(mark.share)} y2={y(mark.share)} />}
      <line ref={needle} className='time-needle' y1={plot.top - 6} y2={plot.bottom + 4} />
      {now && <line className='time-now' x1={x(now.at)} x2={x(now.at)} y1={y(now.low)} y2={y(now.high)} />}
    </svg>
  )
}
