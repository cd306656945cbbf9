import { wordsOf } from '../../../words/index.ts'
import { useResult } from '../../hooks/usePier.ts'
import { useUnits } from '../../hooks/useUnits.ts'

/** Which loads are held against the pier just now, over the inputs that they come from. */
export const LoadsNote = () => {
  const words = wordsOf('app').loads
  const { demand, spec } = useResult()
  const { say } = useUnits()
  if (demand.kind === null) return <p className='group-note'>{words.none}</p>
  if (demand.kind === 'entered') return <p className='group-note'>{spec.loads.estimate ? words.enteredFirst : words.entered}</p>
  const parts = [
    demand.uplift && words.up(say(Math.max(0, demand.uplift.value), 'force')),
    demand.gravity && words.down(say(demand.gravity.value, 'force')),
    demand.lateral && words.sideways(say(demand.lateral.value, 'force')),
  ].filter((part) => part !== null)
  return (
    <p className='group-note'>
      <span className='estimate-mark'>{words.mark}</span> {parts.join(', ')}. {words.estimated}
    </p>
  )
}
