import { Fragment } from 'react'
import type { WetShare } from '../../../core/model/moistureResult.ts'
import { wordsOf } from '../../../words/index.ts'
import { Pairs } from '../../kit/FactTable.tsx'
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
      <Pairs
        of={present.map(({ wetness, area }) => [
          <Fragment key={wetness}>
            <Drops wetness={wetness} /> {wordsOf('moisture').wetness[wetness]}
          </Fragment>,
          say(area, 'area'),
        ])}
      />
    </>
  )
}
