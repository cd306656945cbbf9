import type { Fact } from '../../model/fact.ts'
import type { ChangeId, CheckId } from '../../model/saidIds.ts'
import type { PierSpec } from '../../model/spec.ts'
import { validateSpec } from '../../spec/validate.ts'
import { type Newtons, newtons } from '../../units/quantity.ts'
import { derivePier } from '../derivePier.ts'
import { factsOf, report } from '../report/report.ts'
import type { ToldCheck } from '../report/status.ts'
import { worsened } from '../report/worsened.ts'
import { type Change, changes } from './changes.ts'

/** What one change would do to the least link of the uplift chain. */
export type WhatIf = Readonly<{
  /** Key into the text table ("changes"). */
  id: ChangeId
  spec: PierSpec
  /** Allowable uplift of the changed pier, and how much more that is than now. */
  allowable: Newtons
  gain: Newtons
  governing: CheckId
  /** What it makes worse meanwhile. */
  worse: readonly ToldCheck[]
}>

/** One change tried alone on a pier that is told by these facts; null where it can't be built from here or leaves the chain without a capacity. */
export function tryChange(spec: PierSpec, facts: readonly Fact[], { id, apply }: Change): WhatIf | null {
  const next = apply(spec)
  if (!next || validateSpec(next).some((issue) => issue.severity === 'error')) return null
  const [whole] = factsOf(facts, 'uplift')
  const now = whole?.value?.as === 'number' ? whole.value.value : null
  const result = derivePier(next)
  const { allowable, governing } = result.uplift
  if (now === null || allowable === null || governing === null) return null
  return { id, spec: next, allowable, gain: newtons(allowable - now), governing, worse: worsened(facts, report(result)) }
}

export const inOrderOfGain = (a: WhatIf, b: WhatIf): number => b.gain - a.gain

/**
 * The changes that can be built from here, by what each adds to the allowable uplift, most first. Empty when the chain has no capacity
 * to begin with: then the thing to change is what can't be verified. Each is tried alone; their gains do not add up.
 */
export function whatIf(spec: PierSpec): readonly WhatIf[] {
  const facts = report(derivePier(spec))
  return changes
    .map((change) => tryChange(spec, facts, change))
    .filter((one) => one !== null)
    .sort(inOrderOfGain)
}
