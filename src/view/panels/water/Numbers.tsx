import type { Worked } from '../../../core/model/worked.ts'
import { wordsOf } from '../../../words/index.ts'
import { WorkedDetails } from '../answers/WorkedDetails.tsx'

/** Numbers behind a plain answer, folded: each opens down to its formula and source. */
export const Numbers = ({ of }: { of: readonly (Worked | null)[] }) => {
  const numbers = of.filter((one) => one !== null)
  if (numbers.length === 0) return null
  return (
    <details className='water-numbers'>
      <summary>{wordsOf('moisture').numbers(String(numbers.length))}</summary>
      {numbers.map((one) => (
        <WorkedDetails key={one.id} worked={one} />
      ))}
    </details>
  )
}
