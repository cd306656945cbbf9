import { withMistakes } from '../core/derive/build/mistakes.ts'
import { derivePier } from '../core/derive/derivePier.ts'
import type { MistakeId } from '../core/model/buildStep.ts'
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

type Meant = Pick<AppState, 'document' | 'looking' | 'draft'>

/** The pier on the page, between drags: one that is only looked at, else the open one. */
export const seenDocument = (state: Pick<AppState, 'document' | 'looking'>): PierDocument => state.looking ?? state.document
/** The pier as it is meant: the draft while a drag goes on, else the one on the page. */
export const shownDocument = (state: Meant): PierDocument => state.draft ?? seenDocument(state)
export const meantSpec = (state: Meant): PierSpec => shownDocument(state).spec
export const meantResult = (state: Meant): PierResult => derived(meantSpec(state))

type Shown = Meant & Readonly<{ view: Pick<AppState['view'], 'mistakes'> }>
const gone = new WeakMap<PierSpec, Map<string, PierSpec>>()

/** A pier with mistakes: the same object for the same pier and the same mistakes, in whatever order they were made. */
function goneWrong(spec: PierSpec, mistakes: readonly MistakeId[]): PierSpec {
  const key = [...mistakes].sort().join(' ')
  const known = gone.get(spec) ?? new Map<string, PierSpec>()
  const wrong = known.get(key) ?? withMistakes(spec, mistakes)
  gone.set(spec, known.set(key, wrong))
  return wrong
}

/** What the picture and the numbers show: the pier as it is meant, with the mistakes that are made on it. */
export const shownSpec = (state: Shown): PierSpec =>
  state.view.mistakes.length === 0 ? meantSpec(state) : goneWrong(meantSpec(state), state.view.mistakes)
export const shownResult = (state: Shown): PierResult => derived(shownSpec(state))
