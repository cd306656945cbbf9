import type { PierDocument } from '../../core/model/spec.ts'
import { defaultDocument } from '../../core/spec/defaults.ts'
import type { PierStore } from '../store.ts'
import { dropDraft } from './drag.ts'

/** Another pier takes the place of this one, as one undo step, so that nothing is lost by it. */
export const openDocument = (store: PierStore, document: PierDocument): void => {
  dropDraft(store)
  store.setState({ document, draft: null, refused: [], entries: {} })
}

/** The pier that everybody starts from. Undo brings back what was there. */
export const reset = (store: PierStore): void => openDocument(store, defaultDocument)

/** Names the pier. The name stays on this machine and in the job file; it is not in the link. */
export const setName = (store: PierStore, name: string): void => {
  const { document } = store.getState()
  if (document.name !== name) store.setState({ document: Object.freeze({ ...document, name }) })
}
