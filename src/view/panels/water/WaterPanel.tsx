import { Fragment, useDeferredValue, useMemo } from 'react'
import { deriveMoisture } from '../../../core/derive/moisture/deriveMoisture.ts'
import type { JointResult, MoistureResult, TopResult, WetShare } from '../../../core/model/moistureResult.ts'
import type { PierSpec } from '../../../core/model/spec.ts'
import type { Worked } from '../../../core/model/worked.ts'
import { wordsOf } from '../../../words/index.ts'
import { useShownSpec, useUnits } from '../../hooks/usePier.ts'
import { Bullets } from '../../kit/Lists.tsx'
import { Pairs } from '../../kit/FactTable.tsx'
import { Numbers, WorkedDetails } from '../answers/WorkedDetails.tsx'
import { SaidAndFound } from './SaidAndFound.tsx'
import { Drops, WetnessList } from './WetnessList.tsx'
import './water.css'

/** Area of buried wood in each class. */
const WetShares = ({ shares, wood }: { shares: readonly WetShare[]; wood: MoistureResult['wood'] }) => {
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
      {wood.above > 1e-6 && (
        <p className='quiet'>
          {wordsOf('moisture').sharesOf(say(wood.below + wood.above, 'area'), say(wood.below, 'area'), say(wood.above, 'area'))}
        </p>
      )}
    </>
  )
}

type TopProps = Readonly<{ top: TopResult; onBracket: boolean; hasTexture: boolean }>

/** Where rain goes at the top, and what the ground round the pier does with it. */
const TopAnswers = ({ top, onBracket, hasTexture }: TopProps) => {
  const { say } = useUnits()
  const words = wordsOf('moisture').top
  const { path, fall, splash, ponding } = top
  const end = path.end === 'ground' ? words.ground : onBracket ? words.bracket : words.post
  const rain = ponding ? null : hasTexture ? words.takesRain : words.noTexture
  const numbers: readonly (Worked | null)[] = [
    top.slope,
    top.rimAboveUphill,
    top.rimAboveDownhill,
    top.ponded,
    fall.worked,
    fall.asked,
    top.runoff,
    ponding,
  ]
  const ground = splash.from
  return (
    <>
      <h4>{words.title}</h4>
      <p className='strong'>{end}</p>
      {path.reasons.length > 0 && <Bullets className='water-reasons small' of={path.reasons.map((reason) => words.reasons[reason])} />}
      {path.fromUphill && <p>{words.sheet}</p>}
      {top.swale && <p>{words.swale}</p>}
      {top.pondedVolume > 1e-7 && <p>{words.ponds(say(top.pondedVolume, 'volume'))}</p>}
      <p>{fall.reached ? words.fallReached : words.fallShort}</p>
      <p className='quiet'>{wordsOf('moisture').traps['trap-six-inches-in-ten-feet']}</p>
      <p>{words.splash(say(splash.to - ground, 'length'), say(splash.inHeavyRain - ground, 'length'))}</p>
      {rain && <p className='quiet'>{rain}</p>}
      <Numbers of={numbers} />
    </>
  )
}

/** The joint that opens as the wood dries. */
const JointAnswers = ({ joint }: { joint: JointResult | null }) => {
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

/** Water against the wood of one pier: classes along it, rain at the top, the joint, and what is said of it beside what was found. */
const Answers = ({ spec }: { spec: PierSpec }) => {
  const result = useMemo(() => deriveMoisture(spec), [spec])
  const { say } = useUnits()
  const { profile, shares, wood, wetAndAiry, joint, top, groundline, fringe } = result
  const words = wordsOf('moisture')
  const rises = fringe ? [fringe.low, fringe.high].filter((one) => one !== null) : []
  return (
    <div className='water'>
      <h4>{words.title}</h4>
      <p className='quiet'>{words.help}</p>
      <WetnessList profile={profile} />
      <WetShares shares={shares} wood={wood} />
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
