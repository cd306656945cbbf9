import { inputsOf } from '../../../core/uncertainty/inputs.ts'
import { startingAssumptions } from '../../../core/uncertainty/assumptions.ts'
import type { PierSpec } from '../../../core/model/spec.ts'
import { restoreAssumptions, sureStore } from '../../../state/sure.ts'
import { wordsOf } from '../../../words/index.ts'
import { RangeRow } from './RangeRow.tsx'
import { useSure } from './useSure.ts'

/** What is assumed about every input that this pier has, each changed in place. */
export const Ranges = ({ spec }: { spec: PierSpec }) => {
  const sure = wordsOf('sure')
  const assumptions = useSure((state) => state.assumptions)
  return (
    <div className='sure-part stack small'>
      <h4>{sure.ranges.title}</h4>
      <p className='quiet'>{sure.ranges.plain}</p>
      <ul className='sure-ranges'>
        {inputsOf(spec).map((input) => {
          const assumption = assumptions.find(({ id }) => id === input.id)
          return assumption ? <RangeRow key={input.id} input={input} assumption={assumption} spec={spec} /> : null
        })}
      </ul>
      <button type='button' className='button' disabled={assumptions === startingAssumptions} onClick={() => restoreAssumptions(sureStore)}>
        {sure.ranges.restore}
      </button>
    </div>
  )
}
