import { derivePier } from '../core/derive/derivePier.ts'
import type { PierResult } from '../core/model/result.ts'
import type { PierDocument, PierSpec } from '../core/model/spec.ts'
import { validateSpec } from '../core/spec/validate.ts'
import type { AppState } from './appState.ts'

/** Results kept: a document, its draft and four piers side by side, and some to go back to. Undo holds hundreds of specs. */
const kept = 12
const results = new Map<PierSpec, PierResult>()

/** The result of a spec, worked out once while it is among those last asked for: the same spec object gives the same result object. */
export const derived = (spec: PierSpec): PierResult => {
  const result = results.get(spec) ?? { ...derivePier(spec), issues: validateSpec(spec) }
  results.delete(spec)
  results.set(spec, result)
  for (const oldest of results.keys()) {
    if (results.size <= kept) break
    results.delete(oldest)
  }
  return result
}

/** What the picture and the numbers show: the draft while a drag goes on, else the document. */
export const shownDocument = (state: Pick<AppState, 'document' | 'draft'>): PierDocument => state.draft ?? state.document
export const shownSpec = (state: Pick<AppState, 'document' | 'draft'>): PierSpec => shownDocument(state).spec
export const shownResult = (state: Pick<AppState, 'document' | 'draft'>): PierResult => derived(shownSpec(state))
