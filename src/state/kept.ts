import type { AppState, Kept } from './appState.ts'
import type { PierStore } from './store.ts'

export const keptOf = ({ kept, lineage }: Pick<AppState, 'kept' | 'lineage'>): Kept => kept[lineage] ?? { document: null, place: null }

/** Is all of the open pier kept elsewhere? Else it lives in the note of this tab alone. */
export const isKept = (state: Pick<AppState, 'kept' | 'lineage' | 'document'>): boolean => keptOf(state).document === state.document

/** The open pier is kept now, as `document`, at `place`. */
export const markKept = (store: PierStore, lineage: number, kept: Kept): void =>
  store.setState((state) => ({ kept: { ...state.kept, [lineage]: kept } }))
