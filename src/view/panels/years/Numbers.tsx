import type { Worked } from '../../../core/model/worked.ts'
import { wordsOf } from '../../../words/index.ts'
import { WorkedDetails } from '../answers/WorkedDetails.tsx'

/** Numbers behind a plain answer, folded: each opens down to its formula and source. */
export const Numbers = ({ of }: { of: readonly Worked[] }) =>
  of.length > 0 && (
    <details className='years-numbers'>
      <summary>{wordsOf('years').numbers(String(of.length))}</summary>
      {of.map((one) => (
        <WorkedDetails key={one.id} worked={one} />
      ))}
    </details>
  )
