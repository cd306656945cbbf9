import type { Band } from '../../../core/model/timeResult.ts'

type Props = Readonly<{
  /** What it shows, for a reader who can't see it. */
  name: string
  points: readonly Readonly<{ at: number; share: Band }>[]
  /** Last place on the axis, and how far its numbers stand apart. */
  last: number
  every: number
  unit: string
  /** A share marked across, and the places between which it is reached. */
  mark?: Readonly<{ share: number; reached: Band | null }>
}>

const plot = { left: 44, right: 350, top: 10, bottom: 150 } as const

/** A share over time as a band between its two edges. */
export const BandFigure = ({ name, points, last, every, unit, mark }: Props) => {
  const top = Math.max(1, ...points.map(({ share }) => share.high))
  const x = (at: number) => plot.left + (Math.min(at, last) / last) * (plot.right - plot.left)
  const y = (share: number) => plot.bottom - (share / top) * (plot.bottom - plot.top)
  const edge = (end: keyof Band) => points.map(({ at, share }) => `${x(at).toFixed(1)} ${y(share[end]).toFixed(1)}`)
  return (
    <figure className='years-figure'>
      <figcaption>{name}</figcaption>
      <svg viewBox='0 0 360 176' role='img' aria-label={name}>
        {[0, 0.25, 0.5, 0.75, 1].map((share) => (
          <g key={share}>
            <line className='years-grid' x1={plot.left} x2={plot.right} y1={y(share)} y2={y(share)} />
            <text x={plot.left - 6} y={y(share) + 4} textAnchor='end'>
              {100 * share}%
            </text>
          </g>
        ))}
        {Array.from({ length: Math.floor(last / every) + 1 }, (_, i) => i * every).map((at) => (
          <text key={at} x={x(at)} y={plot.bottom + 18} textAnchor={at === last ? 'end' : 'middle'}>
            {at === last ? `${at} ${unit}` : at}
          </text>
        ))}
        {mark?.reached && (
          <rect
            className='years-span'
            x={x(mark.reached.low)}
            y={plot.top}
            width={Math.max(2, x(mark.reached.high) - x(mark.reached.low))}
            height={plot.bottom - plot.top}
          />
        )}
        {points.length > 1 && <path className='years-band' d={`M${edge('high').join('L')}L${edge('low').reverse().join('L')}Z`} />}
        {mark && <line className='years-mark' x1={plot.left} x2={plot.right} y1={y(mark.share)} y2={y(mark.share)} />}
      </svg>
    </figure>
  )
}
