import type { Issue } from '../../core/model/issue.ts'
import type { PierDocument } from '../../core/model/spec.ts'
import type { AppState, RefusedEntry } from '../appState.ts'
import type { PierStore } from '../store.ts'

type Entries = AppState['entries']

const withEntries = (entries: Entries): Pick<AppState, 'entries' | 'refused'> => ({
  entries,
  refused: Object.values(entries).flatMap((entry) => entry.issues),
})

const without = (entries: Entries, path: string): Entries => {
  if (!(path in entries)) return entries
  const { [path]: _, ...rest } = entries
  return rest
}

/** Changes the open pier. One that is only looked at stays as it is. */
const change = (store: PierStore, make: (state: AppState) => Partial<AppState>): void => {
  if (store.getState().looking === null) store.setState(make)
}

/** One document becomes the committed one: one undo step. The entry at `path` is settled by it. */
export const commit = (store: PierStore, document: PierDocument, path: string): void =>
  change(store, (state) => ({ document, draft: null, ...withEntries(without(state.entries, path)) }))

/** A document to look at while a drag goes on; history does not see it. */
export const showDraft = (store: PierStore, draft: PierDocument, path: string): void =>
  change(store, (state) => ({ draft, ...withEntries(without(state.entries, path)) }))

/** Nothing of the document changes; what was entered is kept with its reasons. */
export const refuse = (store: PierStore, path: string, text: string | null, issues: readonly Issue[]): void => {
  const entry: RefusedEntry = { text, issues }
  change(store, (state) => withEntries({ ...state.entries, [path]: entry }))
}

/** The person gave the entry up: its box shows the last good value again. */
export const dropEntry = (store: PierStore, path: string): void => store.setState((state) => withEntries(without(state.entries, path)))
