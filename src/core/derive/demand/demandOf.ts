import type { Demand } from '../../model/result.ts'
import type { PierSpec } from '../../model/spec.ts'
import { enteredDemand } from './enteredDemand.ts'
import { estimatedDemand } from './estimatedDemand.ts'

const unknown: Demand = {
  kind: null,
  isEstimate: false,
  uplift: null,
  gravity: null,
  lateral: null,
  lateralHeight: null,
  cases: [],
  governing: { uplift: null, gravity: null },
  worked: [],
  notes: [],
}

/** What pulls, presses and pushes on one pier: loads from the drawing before an estimate, an estimate before nothing. */
export function demandOf({ loads }: PierSpec): Demand {
  if (loads.entered) return enteredDemand(loads.entered)
  return loads.estimate ? estimatedDemand(loads.estimate) : unknown
}
