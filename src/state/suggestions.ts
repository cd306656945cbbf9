import { changes } from '../core/derive/whatIf/changes.ts'
import { inOrderOfGain, tryChange, type WhatIf } from '../core/derive/whatIf/whatIf.ts'
import type { PierSpec } from '../core/model/spec.ts'
import { originsAfter, pathsChanged } from '../core/spec/origins.ts'
import { makeDocument } from '../core/spec/validate.ts'
import { commit } from './actions/commit.ts'
import { commitDraft } from './actions/draft.ts'
import { derived, factsAbout } from './derived.ts'
import { perSpec } from './perSpec.ts'
import type { PierStore } from './store.ts'

const suggested = perSpec((_: PierSpec): { list: readonly WhatIf[] | null } => ({ list: null }))

/** What is known already of a spec's changes; null until they have been worked out. */
export const suggestionsKnown = (spec: PierSpec): readonly WhatIf[] | null => suggested(spec).list

/**
 * Works out what each change would do, one change a step, so that whoever asks can leave time for a drag between the steps. The last
 * step keeps the list. A chain without a capacity has none.
 */
export function* suggestionSteps(spec: PierSpec): Generator<void, void> {
  const kept = suggested(spec)
  if (kept.list !== null) return
  const now = derived(spec).uplift.allowable
  const found: WhatIf[] = []
  for (const change of now === null ? [] : changes) {
    const one = tryChange(spec, factsAbout(derived(spec)), change)
    if (one) found.push(one)
    yield
  }
  kept.list = found.sort(inOrderOfGain)
}

/** Builds one of the changes, as one undo step. False when the pier is no longer the one that it was worked out for. */
export const applySuggestion = (store: PierStore, from: PierSpec, { spec }: WhatIf): boolean => {
  commitDraft(store)
  const { document } = store.getState()
  if (document.spec !== from) return false
  const made = makeDocument({ ...document, spec, origins: originsAfter(document, spec, pathsChanged(from, spec)) })
  if (made.ok) commit(store, made.value, '')
  return made.ok
}
