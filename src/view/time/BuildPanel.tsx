import { shownSteps } from '../../state/shown.ts'
import { wordsOf } from '../../words/index.ts'
import { usePier, useResult } from '../hooks/usePier.ts'
import { zoneName } from '../section/nameWishes.ts'
import { Bullets } from '../kit/Lists.tsx'
import { Dangers } from './Dangers.tsx'
import { BuiltWrong, Mistakes } from './Mistakes.tsx'

/** One step of building: danger first, then what is done, what to check, what goes wrong, and what nobody sees any more once it is done. */
export const BuildPanel = ({ step: at }: Readonly<{ step: number }>) => {
  const words = wordsOf('time').build
  const build = wordsOf('build')
  const steps = usePier(shownSteps)
  const { zones } = useResult()
  const step = steps[at]
  if (!step) return null
  const before = steps[at - 1]
  const named = (isMeant: (id: string) => boolean): readonly string[] => [
    ...new Set(zones.filter(({ id }) => isMeant(id)).map(({ label }) => zoneName(label))),
  ]
  const arrived = named((id) => before !== undefined && step.zones.includes(id) && !before.zones.includes(id))
  const gone = named((id) => step.hiddenAfter.includes(id) && before?.hiddenAfter.includes(id) !== true)
  return (
    <div className='time-two'>
      <div className='stack'>
        <Dangers step={step} />
        <p className='lead'>{wordsOf('steps')[step.id]}</p>
        {step.inspection && <p className='strong'>{words.inspection}</p>}
        {arrived.length > 0 && (
          <p>
            {words.arrives} {arrived.join(', ')}.
          </p>
        )}
        {gone.length > 0 && (
          <p>
            <strong>{words.hidden}</strong> {gone.join(', ')}.
          </p>
        )}
        <BuiltWrong />
      </div>
      <div className='stack'>
        <h2>{words.check}</h2>
        <Bullets className='stack tight dashes' of={step.checks.map((check) => build.checks[check])} />
        <h2>{words.wrong}</h2>
        <p>{build.wrong[step.id]}</p>
        <Mistakes ids={step.wrong} />
        <p className='quiet'>{words.practice}</p>
      </div>
    </div>
  )
}
