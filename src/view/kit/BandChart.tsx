import './parts.css'
import { useEffect, useRef } from 'react'

export type BandPoint = Readonly<{ at: number; low: number; high: number }>
type Props = Readonly<{
  /** What it shows, for a reader who can't see it. */
  name: string
  /** What stands over it, where that is not its name. */
  caption?: string
  points: readonly BandPoint[]
  /** Last place on the axis [days, years] and how far its numbers stand apart. */
  last: number
  every: number
  unit: string
  /** A share marked across, 0..1; and the places between which it is reached. */
  mark?: Readonly<{ share: number; from: number | null; to: number | null }> | null
  /** The place on show, and what tells of each place that follows: gives back how to be told no more. */
  moment?: Readonly<{ at: number; listen: (move: (place: number) => void) => () => void }>
}>

const [width, height] = [340, 176]
const plot = { left: 42, right: 330, top: 10, bottom: 146 }
const shares = [0, 0.25, 0.5, 0.75, 1]

/** A band of a share over time, and the moment on show as a line that moves with every place that it is told. */
export const BandChart = ({ name, caption = name, points, last, every, unit, mark = null, moment }: Props) => {
  const needle = useRef<SVGLineElement>(null)
  const top = Math.max(1, ...points.map(({ high }) => high))
  const x = (place: number): number => plot.left + (Math.min(place, last) / last) * (plot.right - plot.left)
  const y = (share: number): number => plot.bottom - (share / top) * (plot.bottom - plot.top)
  const { at, listen } = moment ?? {}
  useEffect(() => {
    if (at === undefined || listen === undefined) return
    const move = (place: number): void => {
      const line = needle.current
      if (!line) return
      const to = plot.left + (place / last) * (plot.right - plot.left)
      line.x1.baseVal.value = to
      line.x2.baseVal.value = to
    }
    move(at)
    return listen(move)
  }, [at, last, listen])
  const edge = (side: 'low' | 'high'): string[] => points.map((point) => `${x(point.at).toFixed(1)} ${y(point[side]).toFixed(1)}`)
  const off = (point: BandPoint): number => Math.abs(point.at - (at ?? 0))
  const now = at === undefined ? null : points.reduce<BandPoint | null>((best, one) => (best && off(best) <= off(one) ? best : one), null)
  return (
    <figure>
      <figcaption>{caption}</figcaption>
      <svg className='drawing' viewBox={`0 0 ${width} ${height}`} role='img' aria-label={name}>
        {shares.map((share) => (
          <g key={share}>
            <line className='line-rule' x1={plot.left} x2={plot.right} y1={y(share)} y2={y(share)} />
            <text x={plot.left - 6} y={y(share) + 4} textAnchor='end'>
              {Math.round(share * 100)}%
            </text>
          </g>
        ))}
        {Array.from({ length: Math.floor(last / every) + 1 }, (_, i) => i * every).map((place) => (
          <g key={place}>
            <line className='line-edge' x1={x(place)} x2={x(place)} y1={plot.bottom} y2={plot.bottom + 5} />
            <text x={x(place)} y={plot.bottom + 19} textAnchor='middle'>
              {place === 0 ? `0 ${unit}` : place}
            </text>
          </g>
        ))}
        {mark && mark.from !== null && (
          <rect
            className='band-span'
            x={x(mark.from)}
            y={plot.top}
            width={Math.max(2, x(mark.to ?? last) - x(mark.from))}
            height={plot.bottom - plot.top}
          />
        )}
        {points.length > 1 && <path className='band' d={`M${edge('high').join('L')}L${edge('low').reverse().join('L')}Z`} />}
        {mark && <line className='line-ink dashed' x1={plot.left} x2={plot.right} y1={y(mark.share)} y2={y(mark.share)} />}
        {moment && <line ref={needle} className='line-ink firm' y1={plot.top - 6} y2={plot.bottom + 4} />}
        {now && <line className='band-now' x1={x(now.at)} x2={x(now.at)} y1={y(now.low)} y2={y(now.high)} />}
      </svg>
    </figure>
  )
}
