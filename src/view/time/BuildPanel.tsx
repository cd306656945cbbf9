import { buildScenes } from '../../state/buildScenes.ts'
import { standingCautions } from '../../text/en/cautions.ts'
import { time } from '../../text/en/time.ts'
import { zoneName } from '../section/nameWishes.ts'
import { useResult } from '../hooks/usePier.ts'
import { cardOf, stepText } from './buildTexts.ts'

const words = time.build
/** General cautions that a step calls for, before anything else is said of it. */
const dangers: Readonly<Record<string, readonly string[]>> = {
  drill: ['call-before-you-dig', 'open-holes'],
  'clean-out': ['open-holes'],
  'set-and-brace': ['open-holes'],
  'empty-bags': ['silica-dust', 'cement-burns'],
  'pour-dry': ['silica-dust', 'cement-burns'],
  'wet-from-top': ['cement-burns'],
  'place-pad': ['cement-burns'],
  'place-mixed': ['cement-burns'],
  consolidate: ['cement-burns'],
  'finish-top': ['cement-burns'],
  'pour-flowable': ['cement-burns'],
  'set-bracket-in-wet-concrete': ['cement-burns'],
  'drill-and-clean-anchor-holes': ['silica-dust'],
}

/** One step of building: danger first, then what is done, what to check, what goes wrong, and what nobody sees any more once it is done. */
export const BuildPanel = ({ step }: Readonly<{ step: number }>) => {
  const result = useResult()
  const scenes = buildScenes(result)
  const scene = scenes[step]
  if (!scene) return null
  const before = scenes[step - 1]?.zones
  const fresh = result.zones.filter(({ id }) => before && scene.zones.has(id) && !before.has(id))
  const arrived = [...new Set(fresh.map(({ label }) => zoneName(label)))]
  const card = cardOf(scene.id)
  const cautions = standingCautions.filter(({ id }) => dangers[scene.id]?.includes(id))
  return (
    <div className='time-two'>
      <div className='time-say'>
        {cautions.length > 0 && (
          <div className='time-danger'>
            <h4>{words.danger}</h4>
            {cautions.map(({ id, short, long }) => (
              <p key={id}>
                <strong>{short}</strong> {long}
              </p>
            ))}
          </div>
        )}
        <p className='time-lead'>{stepText(scene.id)}</p>
        {arrived.length > 0 && <p className='time-small'>{words.arrives(arrived.join(', '))}</p>}
        {card?.inspect && <p className='time-inspect'>{words.inspection}</p>}
      </div>
      {card && (
        <div className='time-say'>
          <h4>{words.check}</h4>
          <p>{card.check}</p>
          <h4>{words.wrong}</h4>
          <p>{card.wrong}</p>
          {card.hidden !== undefined && (
            <>
              <h4>{words.hidden}</h4>
              <p>{card.hidden}</p>
            </>
          )}
          <p className='time-small'>{words.practice}</p>
        </div>
      )}
    </div>
  )
}
