import type { PierDocument } from '../../core/model/spec.ts'
import { openingDocument } from '../../core/spec/openingPier.ts'
import { type Kept, keptAsIs, newLineage } from '../document/opened.ts'
import type { PierStore } from '../store.ts'
import { dropDraft } from './draft.ts'
import { putRight } from './view.ts'

/**
 * Another pier takes the place of this one, as one undo step, so that nothing is lost by it.
 * @param kept where it is kept besides; a pier from a file or a link is kept there as it is
 */
export const openDocument = (store: PierStore, document: PierDocument, kept: Kept<PierDocument> = keptAsIs(document)): void => {
  dropDraft(store)
  putRight(store)
  const lineage = newLineage()
  store.setState((state) => ({
    document,
    lineage,
    kept: { ...state.kept, [lineage]: kept },
    looking: null,
    draft: null,
    refused: [],
    entries: {},
  }))
}

/** The pier that everybody starts from. Undo brings back what was there. */
export const reset = (store: PierStore): void => openDocument(store, openingDocument)

/** Names the pier. The name stays on this machine and in the job file; it is not in the link. */
export const setName = (store: PierStore, name: string): void => {
  const { document, looking } = store.getState()
  if (looking === null && document.name !== name) store.setState({ document: Object.freeze({ ...document, name }) })
}
