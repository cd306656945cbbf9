import type { SpreadOfUplift, Swing } from '../../../core/uncertainty/sureResult.ts'
import type { PierSpec } from '../../../core/model/spec.ts'
import { wordsOf } from '../../../words/index.ts'
import { useUnits } from '../../hooks/usePier.ts'
import { drawnFigure, inputOf, inputWords, type Scale, straightScale } from './sureFigures.ts'

const width = 300
const height = 16

/** A thousandth of the number is less than its last digit. */
const isStill = ({ allowable: [low, high] }: Swing, asEntered: number): boolean =>
  low !== null && high !== null && Math.abs(high - low) < 1e-3 * Math.abs(asEntered)

/** One bar on the scale that all share: what the pier holds between the low and the high value, either side of what it holds as entered. */
const Bar = ({ swing: { allowable }, asEntered, scale }: { swing: Swing; asEntered: number; scale: Scale }) => {
  const ends = allowable.map((value) => value ?? asEntered)
  const [left, right] = [scale.at(Math.min(asEntered, ...ends)), scale.at(Math.max(asEntered, ...ends))]
  const middle = scale.at(asEntered)
  return (
    <svg className='drawing' viewBox={`0 0 ${width} ${height}`} aria-hidden='true' focusable='false'>
      <rect className='fill-pale line-ink' x={left} y='3' width={Math.max(middle - left, 0)} height={height - 6} />
      <rect className='fill-mid line-ink' x={middle} y='3' width={Math.max(right - middle, 0)} height={height - 6} />
      <path className='fill-none line-mid' d={`M${middle} 0V${height}`} />
    </svg>
  )
}

/** What each input does by itself, widest first, in one table that reads without the bars. */
export const Swings = ({ result, spec }: { result: SpreadOfUplift; spec: PierSpec }) => {
  const sure = wordsOf('sure')
  const units = useUnits()
  const { swings, asEntered } = result
  const moving = swings.filter((swing) => !isStill(swing, asEntered))
  const still = swings.filter((swing) => isStill(swing, asEntered)).map(({ id }) => inputWords(id).label.toLowerCase())
  const held = moving.flatMap(({ allowable }) => allowable.filter((value) => value !== null))
  const scale = straightScale(Math.min(asEntered, ...held), Math.max(asEntered, ...held), 4, width - 4)
  const holds = (value: number | null) => (value === null ? sure.swings.none : units.say(value, 'force'))
  return (
    <div className='sure-part stack small'>
      <h4 className='flat'>{sure.swings.title}</h4>
      <p className='quiet'>{sure.swings.plain}</p>
      {moving.length > 0 && (
        <ol>
          {moving.map((swing) => {
            const input = inputOf(swing.id)
            const at = input ? swing.at.map((draw) => drawnFigure(input, spec, draw, units)) : []
            const [atLow, atHigh] = swing.allowable
            return (
              <li key={swing.id} className='stack tight ruled'>
                <span className='ends sure-sides'>
                  <span>{inputWords(swing.id).label}</span>
                </span>
                <Bar swing={swing} asEntered={asEntered} scale={scale} />
                <span className='ends sure-sides quiet'>
                  <span>
                    {at[0]}: <b>{holds(atLow)}</b>
                  </span>
                  <span>
                    {at[1]}: <b>{holds(atHigh)}</b>
                  </span>
                </span>
              </li>
            )
          })}
        </ol>
      )}
      {still.length > 0 && <p className='quiet'>{sure.swings.still(still.join(', '))}</p>}
    </div>
  )
}
