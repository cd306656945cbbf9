import { deriveMoisture } from '../core/derive/moisture/deriveMoisture.ts'
import type { MoistureResult } from '../core/model/moistureResult.ts'
import type { PierSpec } from '../core/model/spec.ts'

const known = new WeakMap<PierSpec, MoistureResult>()

/** Water against the wood of a spec, worked out once for as long as somebody holds it. */
export const moistureOf = (spec: PierSpec): MoistureResult => {
  const before = known.get(spec)
  if (before) return before
  const moisture = deriveMoisture(spec)
  known.set(spec, moisture)
  return moisture
}
