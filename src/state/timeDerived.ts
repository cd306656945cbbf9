import { deriveMix } from '../core/derive/mix/deriveMix.ts'
import { deriveLife } from '../core/derive/life/deriveLife.ts'
import type { PierSpec } from '../core/model/spec.ts'
import type { LifeResult, MixResult } from '../core/model/timeResult.ts'
import { perSpec } from './perSpec.ts'

/** What becomes of the mix, and what may be said of the post's life: apart from the result that every edit needs. */
export const mixOf: (spec: PierSpec) => MixResult = perSpec(deriveMix)
export const lifeOf: (spec: PierSpec) => LifeResult = perSpec(deriveLife)
