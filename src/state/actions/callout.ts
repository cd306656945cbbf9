import { type CalloutText, setCalloutText } from '../../core/spec/edit.ts'
import type { PierStore } from '../store.ts'
import { commit, refuse } from './commit.ts'
import { commitDraft } from './draft.ts'

/** Enters a word of the drawing: its number, its date or notes. False when it was refused. */
export const enterCalloutText = (store: PierStore, key: CalloutText, text: string): boolean => {
  commitDraft(store)
  const { document } = store.getState()
  if (document.spec.callout === null || document.spec.callout[key] === text) return true
  const path = `callout.${key}`
  const result = setCalloutText(document, key, text)
  if (result.ok) commit(store, result.value, path)
  else refuse(store, path, text, result.issues)
  return result.ok
}
