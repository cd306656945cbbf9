import type { Result } from '../../core/model/issue.ts'
import type { PierDocument } from '../../core/model/spec.ts'
import { setChoice, setField, setNumber, setPart } from '../../core/spec/edit.ts'
import { valueAt } from '../../core/spec/path.ts'
import type { PierStore } from '../store.ts'
import { commit, dropEntry, refuse } from './commit.ts'
import { commitDraft } from './draft.ts'

const settle = (store: PierStore, path: string, text: string | null, result: Result<PierDocument>): boolean => {
  if (!result.ok) {
    refuse(store, path, text, result.issues)
    return false
  }
  const { document } = store.getState()
  const same =
    Object.is(valueAt(document.spec, path), valueAt(result.value.spec, path)) && document.written[path] === result.value.written[path]
  if (same) dropEntry(store, path)
  else commit(store, result.value, path)
  return true
}

/** Enters what was typed at `path`; a bare number has the unit shown. False when it was refused: the last good pier stays. */
export const editField = (store: PierStore, path: string, text: string): boolean => {
  commitDraft(store)
  const { document, view } = store.getState()
  return settle(store, path, text, setField(document, path, text, view.units))
}

/** Switches an optional part on, with the values it starts from, or off. */
export const switchPart = (store: PierStore, path: string, on: boolean): boolean => {
  commitDraft(store)
  return settle(store, path, null, setPart(store.getState().document, path, on))
}

/** Picks one of the choices at `path`; null for none, where a choice may be left out. */
export const pickChoice = (store: PierStore, path: string, choice: string | number | null): boolean => {
  commitDraft(store)
  return settle(store, path, null, setChoice(store.getState().document, path, choice))
}

/** Puts an SI number, or none, at `path` at once. */
export const setValue = (store: PierStore, path: string, value: number | null): boolean => {
  commitDraft(store)
  return settle(store, path, null, setNumber(store.getState().document, path, value))
}
