import { withMistakes } from '../core/derive/build/mistakes.ts'
import { derivePier } from '../core/derive/derivePier.ts'
import { report } from '../core/derive/report/report.ts'
import type { Fact } from '../core/model/fact.ts'
import type { MistakeId } from '../core/model/buildStep.ts'
import type { PierResult } from '../core/model/result.ts'
import type { PierDocument, PierSpec } from '../core/model/spec.ts'
import { validateSpec } from '../core/spec/validate.ts'
import type { AppState } from './appState.ts'
import { perSpec } from './perSpec.ts'

/** Results kept: a document, its draft and four piers side by side, and some to go back to. Undo holds hundreds of specs. */
const resultsKept = 12

/** The result of a spec, worked out once while it is among those last asked for: the same spec object gives the same result object. */
export const derived: (spec: PierSpec) => PierResult = perSpec((spec) => ({ ...derivePier(spec), issues: validateSpec(spec) }), resultsKept)

type Meant = Pick<AppState, 'document' | 'looking' | 'draft'>

/** The pier on the page, between drags: one that is only looked at, else the open one. */
export const seenDocument = (state: Pick<AppState, 'document' | 'looking'>): PierDocument => state.looking ?? state.document
/** The pier as it is meant: the draft while a drag goes on, else the one on the page. */
export const shownDocument = (state: Meant): PierDocument => state.draft ?? seenDocument(state)
export const meantSpec = (state: Meant): PierSpec => shownDocument(state).spec
export const meantResult = (state: Meant): PierResult => derived(meantSpec(state))

type Shown = Meant & Readonly<{ view: Pick<AppState['view'], 'mistakes'> }>
/** A pier with mistakes: the same object for the same pier and the same mistakes, in whatever order they were made. */
const goneWrong = perSpec((spec: PierSpec) => {
  const made = new Map<string, PierSpec>()
  return (mistakes: readonly MistakeId[]): PierSpec => {
    const key = [...mistakes].sort().join(' ')
    const wrong = made.get(key) ?? withMistakes(spec, mistakes)
    made.set(key, wrong)
    return wrong
  }
})

/** What the picture and the numbers show: the pier as it is meant, with the mistakes that are made on it. */
export const shownSpec = (state: Shown): PierSpec =>
  state.view.mistakes.length === 0 ? meantSpec(state) : goneWrong(meantSpec(state))(state.view.mistakes)
export const shownResult = (state: Shown): PierResult => derived(shownSpec(state))

/** Everything that is said of a pier, worked out once for a result. */
export const factsAbout: (result: PierResult) => readonly Fact[] = perSpec(report)
