import type { CSSProperties } from 'react'
import { wordsOf } from '../../../words/index.ts'
import { usePier, useUnits } from '../../hooks/usePier.ts'
import type { PullPath } from '../../../core/derive/report/pullPath.ts'
import { type ChartScale, shareOf } from './chartScale.ts'

/** Stands over its place on the scale, and leans inward near either end. */
const at = (share: number): CSSProperties =>
  ({ left: `${100 * share}%`, transform: `translateX(${-100 * share}%)`, '--share': `${100 * share}%` }) as CSSProperties

const PullMark = ({ scale }: { scale: ChartScale }) => {
  const pull = usePier((state) => state.view.pull)
  const { say } = useUnits()
  if (pull === null) return null
  return (
    <span className='axis-mark heavy ' style={at(shareOf(scale, pull))}>
      {wordsOf('loadPath').pull} {say(pull, 'force')}
    </span>
  )
}

/** The scale over the bars, and over it what pulls. For the eye: every number stands in the list too. */
export const Axis = ({ scale, chain }: { scale: ChartScale; chain: PullPath }) => {
  const { say, bare } = useUnits()
  const pulling = usePier((state) => state.view.pull !== null) && chain.holds !== null
  const last = scale.ticks.length - 1
  const { asked, whole } = chain
  return (
    <div className='axis panel small' aria-hidden='true'>
      {(pulling || (asked !== null && asked > 0)) && (
        <div className='axis-marks'>
          {!pulling && asked !== null && (
            <span className='axis-mark heavy' style={at(shareOf(scale, asked))}>
              {wordsOf('loadPath').demand[whole.isEstimate ? 'estimated' : 'entered']} {say(asked, 'force')}
            </span>
          )}
          {pulling && <PullMark scale={scale} />}
        </div>
      )}
      <div className='axis-ticks'>
        {scale.ticks.map((tick, i) => (
          <span key={tick} style={at(i / last)}>
            {i === last ? say(tick, 'force') : bare(tick, 'force')}
          </span>
        ))}
      </div>
    </div>
  )
}
