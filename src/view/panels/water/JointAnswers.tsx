import type { JointResult } from '../../../core/model/moistureResult.ts'
import { wordsOf } from '../../../words/index.ts'
import { useUnits } from '../../hooks/useUnits.ts'
import { Numbers } from '../answers/WorkedDetails.tsx'

/** The joint that opens as the wood dries. */
export const JointAnswers = ({ joint }: { joint: JointResult | null }) => {
  const { say } = useUnits()
  const words = wordsOf('moisture').joint
  const numbers = joint ? [...joint.gaps, joint.volume, joint.conductivity, ...joint.against, joint.capillaryHold] : []
  return (
    <>
      <h4>{words.title}</h4>
      {joint === null ? (
        <p>{words.none}</p>
      ) : joint.widest > 0 ? (
        <>
          <p>{words.open(say(joint.widest, 'length'), say(joint.reach, 'length'))}</p>
          <p className='quiet'>{words.limit}</p>
        </>
      ) : (
        <p>{words.closed}</p>
      )}
      {joint !== null && joint.widest > 0 && <Numbers of={numbers} />}
    </>
  )
}
