import type { WetShare } from '../../../core/model/moistureResult.ts'
import { wordsOf } from '../../../words/index.ts'
import { useUnits } from '../../hooks/useUnits.ts'
import { Drops } from './WetnessList.tsx'

/** Area of buried wood in each class. */
export const WetShares = ({ shares }: { shares: readonly WetShare[] }) => {
  const { say } = useUnits()
  const present = shares.filter((one) => one.area > 1e-9)
  if (present.length === 0) return null
  return (
    <>
      <h5>{wordsOf('moisture').shares}</h5>
      <div className='wet-bar' aria-hidden='true'>
        {present.map((one) => (
          <span key={one.wetness} className={`wet-part wet-${one.wetness}`} style={{ width: `${100 * one.share}%` }} />
        ))}
      </div>
      <dl className='pairs'>
        {present.map((one) => (
          <div key={one.wetness}>
            <dt>
              <Drops wetness={one.wetness} /> {wordsOf('moisture').wetness[one.wetness]}
            </dt>
            <dd>{say(one.area, 'area')}</dd>
          </div>
        ))}
      </dl>
    </>
  )
}
