import { workedPushWithLean } from '../../engineering/detail/leaning.ts'
import type { Demand } from '../../model/result.ts'
import type { PierSpec } from '../../model/spec.ts'
import { newtons, type Radians } from '../../units/quantity.ts'
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

/**
 * What pulls, presses and pushes on one pier: loads from the drawing before an estimate, an estimate before the uplift of the drawing check
 * alone. A part that is switched on and left empty asks nothing.
 */
export function demandOf(spec: PierSpec): Demand {
  const { loads } = spec
  const estimated = loads.estimate && estimatedDemand(loads.estimate)
  const plumb = (loads.entered && enteredDemand(spec)) ?? estimated ?? enteredDemand(spec) ?? unknown
  return spec.support.kind === 'embedded' && spec.post.lean > 0 ? leaningDemand(plumb, spec.post.lean) : plumb
}

/** The load on a leaning post pushes sideways too, as if nothing above held it back; where the side load is not known it stays unknown. */
function leaningDemand(plumb: Demand, lean: Radians): Demand {
  const { gravity, lateral } = plumb
  if (!gravity || !lateral || !(gravity.value > 0)) return plumb
  const inputs = { plumbPush: newtons(lateral.value), onPost: newtons(gravity.value), lean }
  const use = { standings: [lateral.standing, gravity.standing], sources: [...lateral.sources, ...gravity.sources] }
  return { ...plumb, lateral: workedPushWithLean(inputs, use), worked: [...plumb.worked, { ...lateral, id: 'demand-lateral-plumb' }] }
}
