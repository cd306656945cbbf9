import type { TopResult } from '../../../core/model/moistureResult.ts'
import type { Worked } from '../../../core/model/worked.ts'
import { wordsOf } from '../../../words/index.ts'
import { useUnits } from '../../hooks/useUnits.ts'
import { Numbers } from '../answers/WorkedDetails.tsx'

type Props = Readonly<{ top: TopResult; onBracket: boolean; hasTexture: boolean }>

/** Where rain goes at the top, and what the ground round the pier does with it. */
export const TopAnswers = ({ top, onBracket, hasTexture }: Props) => {
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
      <p className='water-end'>{end}</p>
      {path.reasons.length > 0 && (
        <ul className='water-reasons'>
          {path.reasons.map((reason) => (
            <li key={reason}>{words.reasons[reason]}</li>
          ))}
        </ul>
      )}
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
