import { derivePier } from '../core/derive/derivePier.ts'
import type { PierResult } from '../core/model/result.ts'
import type { PierDocument, PierSpec } from '../core/model/spec.ts'
import { validateSpec } from '../core/spec/validate.ts'
import type { AppState } from './appState.ts'

const results = new WeakMap<PierSpec, PierResult>()

/** The result of a spec, worked out once: the same spec object always gives the same result object. */
export const derived = (spec: PierSpec): PierResult => {
  const known = results.get(spec)
  if (known) return known
  const result: PierResult = { ...derivePier(spec), issues: validateSpec(spec) }
  results.set(spec, result)
  return result
}

/** What the picture and the numbers show: the draft while a drag goes on, else the document. */
export const shownDocument = (state: Pick<AppState, 'document' | 'draft'>): PierDocument => state.draft ?? state.document
export const shownSpec = (state: Pick<AppState, 'document' | 'draft'>): PierSpec => shownDocument(state).spec
export const shownResult = (state: Pick<AppState, 'document' | 'draft'>): PierResult => derived(shownSpec(state))
