import { useDeferredValue, useMemo } from 'react'
import { deriveMoisture } from '../../../core/derive/moisture/deriveMoisture.ts'
import type { PierSpec } from '../../../core/model/spec.ts'
import { wordsOf } from '../../../words/index.ts'
import { useShownSpec } from '../../hooks/usePier.ts'
import { useUnits } from '../../hooks/useUnits.ts'
import { WorkedDetails } from '../answers/WorkedDetails.tsx'
import { JointAnswers } from './JointAnswers.tsx'
import { SaidAndFound } from './SaidAndFound.tsx'
import { TopAnswers } from './TopAnswers.tsx'
import { WetShares } from './WetShares.tsx'
import { WetnessList } from './WetnessList.tsx'
import './water.css'

/** Water against the wood of one pier: classes along it, rain at the top, the joint, and what is said of it beside what was found. */
const Answers = ({ spec }: { spec: PierSpec }) => {
  const result = useMemo(() => deriveMoisture(spec), [spec])
  const { say } = useUnits()
  const { profile, shares, wetAndAiry, joint, top, groundline, fringe } = result
  const words = wordsOf('moisture')
  const rises = fringe ? [fringe.low, fringe.high].filter((one) => one !== null) : []
  return (
    <div className='water'>
      <h4>{words.title}</h4>
      <p className='quiet'>{words.help}</p>
      <WetnessList profile={profile} />
      <WetShares shares={shares} />
      {wetAndAiry > 1e-6 && <p>{words.together(say(wetAndAiry, 'length'))}</p>}
      <p>{words.groundline[groundline.at]}</p>
      {groundline.at !== 'none' && <p className='quiet'>{words.traps['trap-climate-index-for-buried-wood']}</p>}
      {fringe && <p>{rises.length > 0 ? words.fringe : words.noRise}</p>}
      {rises.map((one) => (
        <WorkedDetails key={one.id} worked={one} />
      ))}
      <TopAnswers top={top} onBracket={spec.support.kind === 'bracket'} hasTexture={spec.water.texture !== null} />
      <JointAnswers joint={joint} />
      <SaidAndFound touches={profile.map((one) => one.touch)} />
    </div>
  )
}

/** The answers of the pier on show; a drag does not wait for them. */
export const WaterPanel = () => <Answers spec={useDeferredValue(useShownSpec())} />
