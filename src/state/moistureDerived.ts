import { deriveMoisture } from '../core/derive/moisture/deriveMoisture.ts'
import type { MoistureResult } from '../core/model/moistureResult.ts'
import type { PierSpec } from '../core/model/spec.ts'
import { perSpec } from './perSpec.ts'

/** Water against the wood of a spec. */
export const moistureOf: (spec: PierSpec) => MoistureResult = perSpec(deriveMoisture)
