import { wordsOf } from '../../../words/index.ts'
import { useResult } from '../../hooks/usePier.ts'
import { useUnits } from '../../hooks/useUnits.ts'
import { isSame } from './sideWords.ts'

/** Depth of what bears, at the three places that rules measure from. */
export const DepthTable = () => {
  const { depths } = useResult()
  const { say } = useUnits()
  const words = wordsOf('app').answers
  const rows = [
    [words.sides.uphill, depths.bearingAtUphillEdge],
    [words.sides.axis, depths.bearingAtAxis],
    [words.sides.downhill, depths.bearingAtDownhillEdge],
  ] as const
  const isLevel = isSame(rows.map(([, depth]) => depth))
  const shown = isLevel ? ([[words.sides.all, depths.bearingAtAxis]] as const) : rows
  return (
    <>
      <dl className='pairs'>
        {shown.map(([side, depth]) => (
          <div key={side}>
            <dt>{side}</dt>
            <dd>{say(depth, 'length')}</dd>
          </div>
        ))}
      </dl>
      <p className='quiet'>{isLevel ? words.depthLevel : words.depthNote}</p>
    </>
  )
}
