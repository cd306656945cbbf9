import { deriveMix } from '../core/derive/mix/deriveMix.ts'
import { deriveLife } from '../core/derive/life/deriveLife.ts'
import type { PierSpec } from '../core/model/spec.ts'
import type { LifeResult, MixResult } from '../core/model/timeResult.ts'

/** What is asked of a spec again and again is worked out once, for as long as somebody holds the spec. */
const oncePerSpec = <T>(derive: (spec: PierSpec) => T): ((spec: PierSpec) => T) => {
  const known = new WeakMap<PierSpec, Readonly<{ value: T }>>()
  return (spec) => {
    const before = known.get(spec)
    if (before) return before.value
    const value = derive(spec)
    known.set(spec, { value })
    return value
  }
}

/** What becomes of the mix, and what may be said of the post's life: apart from the result that every edit needs. */
export const mixOf: (spec: PierSpec) => MixResult = oncePerSpec(deriveMix)
export const lifeOf: (spec: PierSpec) => LifeResult = oncePerSpec(deriveLife)
