import { temporal } from 'zundo'
import { createStore } from 'zustand/vanilla'
import { defaultDocument } from '../core/spec/defaults.ts'
import type { PierDocument } from '../core/model/spec.ts'
import type { AppState } from './appState.ts'
import { defaultView } from './defaultView.ts'
import { newLineage } from './lineage.ts'

/** Documents kept for undo. One entry a gesture; entries share all that did not change, so a long list is cheap. */
const historyLimit = 500

/**
 * A vanilla store of the application state. History (`store.temporal`) holds documents only, each with its lineage:
 * looking round, switching units or pointing at a part is never undone.
 */
export const createPierStore = (document: PierDocument) => {
  const lineage = newLineage()
  const kept = { [lineage]: { document, place: null } }
  return createStore<AppState>()(
    temporal(
      (): AppState => ({ document, lineage, kept, looking: null, draft: null, refused: [], entries: {}, notices: [], view: defaultView }),
      {
        partialize: (state): Pick<AppState, 'document' | 'lineage'> => ({ document: state.document, lineage: state.lineage }),
        equality: (past, current) => past.document === current.document,
        limit: historyLimit,
      },
    ),
  )
}

export type PierStore = ReturnType<typeof createPierStore>

/** The one store of the running page. */
export const pierStore: PierStore = createPierStore(defaultDocument)
