import { usePier } from '../../hooks/usePier.ts'
import { type PullPath, holdsOf, isNeeded } from '../../../core/derive/report/pullPath.ts'
import type { Fact } from '../../../core/model/fact.ts'
import { type ChartScale, isBroken, shareOf } from './chartScale.ts'

export const hatchId = 'uncounted-hatch'
const percent = (share: number): string => `${(100 * share).toFixed(3)}%`

/** The hatch of what may not be counted, once for all bars. Its spacing is fixed, whatever the bar. */
export const BarPatterns = () => (
  <svg className='fills' width='0' height='0' aria-hidden='true' focusable='false'>
    <defs>
      <pattern id={hatchId} width='7' height='7' patternUnits='userSpaceOnUse' patternTransform='rotate(45)'>
        <line x1='0.75' y1='0' x2='0.75' y2='7' className='bar-hatch-line' />
      </pattern>
    </defs>
  </svg>
)

/** Where a bar goes on past the scale: the break line of a drawing. */
const Break = ({ height }: { height: number }) => (
  <svg x='88%' width='10' height={height} overflow='visible' aria-hidden='true'>
    <path className='fill-paper bar-gap' d={`M1 ${height + 3} 5 -3 9 -3 5 ${height + 3}Z`} />
    <path className='bar-edge' d={`M1 ${height + 3} 5 -3M5 ${height + 3} 9 -3`} />
  </svg>
)

/** How full the bar is: of the pull at the post, else of the load that is asked for. */
const Fill = ({ holds, scale, load, height }: { holds: number; scale: ChartScale; load: number | null; height: number }) => {
  const pull = usePier((state) => state.view.pull)
  const shown = Math.min(pull ?? load ?? 0, holds)
  return <rect className='bar-load' width={percent(shareOf(scale, shown))} height={height} />
}

const PullLine = ({ scale, height }: { scale: ChartScale; height: number }) => {
  const pull = usePier((state) => state.view.pull)
  if (pull === null) return null
  const at = percent(shareOf(scale, pull))
  return <line className='bar-pull line-ink bolder' x1={at} x2={at} y1={-4} y2={height + 4} />
}

/**
 * One link on the common scale: an empty bar as long as what it holds, filled by what pulls. What may not be counted is hatched from end
 * to end, since nobody knows where it would stop. What is not used, and upper bounds, are thin.
 */
export const LinkBar = ({ link, scale, chain }: { link: Fact; scale: ChartScale; chain: PullPath }) => {
  const isThin = !isNeeded(link)
  const holds = holdsOf(link)
  const height = isThin ? 6 : 14
  const load = chain.asked !== null && chain.asked > 0 ? chain.asked : null
  return (
    <svg
      className={`bar bar-${link.link?.place}`}
      width='100%'
      height={height}
      aria-hidden='true'
      focusable='false'
      data-counted={link.counted ?? undefined}
    >
      {scale.ticks.slice(1).map((tick) => (
        <line key={tick} className='line-rule' x1={percent(shareOf(scale, tick))} x2={percent(shareOf(scale, tick))} y1={0} y2={height} />
      ))}
      {holds === null ? (
        <rect className='bar-uncounted dashed' width='100%' height={height} fill={`url(#${hatchId})`} />
      ) : (
        <>
          <rect className='bar-room' width={percent(shareOf(scale, holds))} height={height} />
          {!isThin && chain.holds !== null && <Fill holds={holds} scale={scale} load={load} height={height} />}
          <rect className='bar-edge' width={percent(shareOf(scale, holds))} height={height} />
          {isBroken(scale, holds) && <Break height={height} />}
        </>
      )}
      {link.verdict === 'falls short' && load !== null && holds !== null && (
        <line
          className='bar-missing dashed line-short bold'
          x1={percent(shareOf(scale, holds))}
          x2={percent(shareOf(scale, load))}
          y1={height / 2}
          y2={height / 2}
        />
      )}
      {load !== null && !isThin && (
        <line
          className='bar-demand line-ink bolder'
          x1={percent(shareOf(scale, load))}
          x2={percent(shareOf(scale, load))}
          y1={-4}
          y2={height + 4}
        />
      )}
      {!isThin && chain.holds !== null && <PullLine scale={scale} height={height} />}
    </svg>
  )
}
