import { text } from '../../../text/index.ts'
import { useResult } from '../../hooks/usePier.ts'
import { useUnits } from '../../hooks/useUnits.ts'

/** Depth of what bears, at the three places that rules measure from. */
export const DepthTable = () => {
  const { depths } = useResult()
  const { say } = useUnits()
  const words = text.app.answers
  const rows = [
    [words.sides.uphill, depths.bearingAtUphillEdge],
    [words.sides.axis, depths.bearingAtAxis],
    [words.sides.downhill, depths.bearingAtDownhillEdge],
  ] as const
  return (
    <>
      <dl className='pairs'>
        {rows.map(([side, depth]) => (
          <div key={side}>
            <dt>{side}</dt>
            <dd>{say(depth, 'length')}</dd>
          </div>
        ))}
      </dl>
      <p className='quiet'>{words.depthNote}</p>
    </>
  )
}
