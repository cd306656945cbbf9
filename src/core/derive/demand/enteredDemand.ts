import type { Demand } from '../../model/result.ts'
import type { EnteredLoads } from '../../model/spec.ts'
import type { Worked } from '../../model/worked.ts'
import { given } from '../given.ts'

const entered = (id: string, value: number): Worked => given(id, value, 'force', { sources: ['user'], standing: 'assumed here' })

/** Loads from the drawing, as they were entered. */
export const enteredDemand = ({ uplift, gravity, lateral, lateralHeight }: EnteredLoads): Demand => ({
  kind: 'entered',
  isEstimate: false,
  uplift: entered('demand-uplift', uplift),
  gravity: entered('demand-gravity', gravity),
  lateral: entered('demand-lateral', lateral),
  lateralHeight,
  cases: [],
  governing: { uplift: null, gravity: null },
  worked: [],
  notes: [],
})
