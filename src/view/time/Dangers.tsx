import type { BuildStep } from '../../core/model/buildStep.ts'
import { wordsOf } from '../../words/index.ts'

/** What can hurt people at a step of building; nothing where nothing is named. */
export const Dangers = ({ step }: Readonly<{ step: BuildStep }>) => {
  const cautions = wordsOf('cautions').standing.filter(({ id }) => step.dangers.includes(id))
  if (cautions.length === 0) return null
  return (
    <div className='danger'>
      <h2>{wordsOf('time').build.danger}</h2>
      {cautions.map(({ id, short, long }) => (
        <p key={id}>
          <strong>{short}</strong> {long}
        </p>
      ))}
    </div>
  )
}
