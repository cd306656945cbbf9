import type { PierDocument, PierSpec } from '../model/spec.ts'
import { deepFreeze } from './path.ts'
import { pierFields } from './pier/pier.ts'

/**
 * A finished pier to start from: mixed concrete full height, one bar, a crown, on a gentle slope. The sizes are a scenario of
 * this project, not a design.
 */
export const defaultSpec: PierSpec = deepFreeze(pierFields.start)

export const defaultDocument: PierDocument = deepFreeze<PierDocument>({
  spec: defaultSpec,
  written: {},
  origins: {},
  otherKinds: [],
  name: '',
  note: '',
})
