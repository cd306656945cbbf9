import type { Issue } from '../../core/model/issue.ts'
import type { SoilMechanism } from '../../core/model/spec.ts'
import { setJudgement } from '../../core/spec/edit.ts'
import type { PierStore } from '../store.ts'
import { commit } from './commit.ts'
import { commitDraft } from './draft.ts'

/**
 * Counts the ground in another way than the least, for a reason that is typed: one undo step. Null goes back to the least.
 * Returns why not; empty when it was done.
 */
export const judge = (store: PierStore, mechanism: SoilMechanism | null, reason: string): readonly Issue[] => {
  commitDraft(store)
  const { document } = store.getState()
  if (mechanism === null && document.spec.judgement === null) return []
  const result = setJudgement(document, mechanism, reason)
  if (!result.ok) return result.issues
  commit(store, result.value, 'judgement')
  return []
}
