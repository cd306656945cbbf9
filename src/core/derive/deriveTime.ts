import type { PierSpec } from '../model/spec.ts'
import type { TimeResult } from '../model/timeResult.ts'
import { deriveCost } from './life/deriveCost.ts'
import { deriveLife } from './life/deriveLife.ts'
import { deriveMix } from './mix/deriveMix.ts'
import { deriveMoisture } from './moisture/deriveMoisture.ts'

/**
 * Water, mix, years and cost of one pier: worked out when asked for, besides what `derivePier` gives at once. Pure.
 * @param spec a valid spec
 */
export function deriveTime(spec: PierSpec): TimeResult {
  const life = deriveLife(spec)
  return { moisture: deriveMoisture(spec), mix: deriveMix(spec), life, cost: deriveCost(spec, life) }
}
