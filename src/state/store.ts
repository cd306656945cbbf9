import { pierKind } from '../core/documents/pier.ts'
import type { PierDocument } from '../core/model/spec.ts'
import type { PageState } from './appState.ts'
import { defaultView } from './defaultView.ts'
import { temporal } from 'zundo'
import { createStore } from 'zustand/vanilla'
import type { AnyDocument } from '../core/documents/documentKind.ts'
import { keptAsIs, newLineage, type Opened } from './document/opened.ts'

/** Documents kept for undo. One entry a gesture; entries share all that did not change, so a long list is cheap. */
const historyLimit = 500

/**
 * A store of one open document, of any kind. History (`store.temporal`) holds documents only, each with its lineage: looking round or
 * pointing at a part is never undone.
 * @param more what else a page of this kind keeps beside its document
 */
export const createDocumentStore = <D extends AnyDocument, M extends object>(document: D, more: M) => {
  const lineage = newLineage()
  return createStore<Opened<D> & M>()(
    temporal((): Opened<D> & M => ({ document, lineage, kept: { [lineage]: keptAsIs(document) }, ...more }), {
      partialize: (state): Pick<Opened<D>, 'document' | 'lineage'> => ({ document: state.document, lineage: state.lineage }),
      equality: (past, current) => past.document === current.document,
      limit: historyLimit,
    }),
  )
}

const page: PageState = { looking: null, draft: null, refused: [], entries: {}, notices: [], view: defaultView }

/** A store of one open pier and of the page round it. */
export const createPierStore = (document: PierDocument) => createDocumentStore(document, page)

export type PierStore = ReturnType<typeof createPierStore>

/** The one store of the running page. */
export const pierStore: PierStore = createPierStore(pierKind.empty)
