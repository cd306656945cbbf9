import type { BuildStep } from '../../core/model/buildStep.ts'
import { standingCautions } from '../../text/en/cautions.ts'
import { time } from '../../text/en/time.ts'

/** What can hurt people at a step of building; nothing where nothing is named. */
export const Dangers = ({ step }: Readonly<{ step: BuildStep }>) => {
  const cautions = standingCautions.filter(({ id }) => step.dangers.includes(id))
  if (cautions.length === 0) return null
  return (
    <div className='time-danger'>
      <h4>{time.build.danger}</h4>
      {cautions.map(({ id, short, long }) => (
        <p key={id}>
          <strong>{short}</strong> {long}
        </p>
      ))}
    </div>
  )
}
