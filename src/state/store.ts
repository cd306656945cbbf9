import { pierKind } from '../core/documents/pier.ts'
import type { PierDocument } from '../core/model/spec.ts'
import type { PageState } from './appState.ts'
import { defaultView } from './defaultView.ts'
import { createDocumentStore } from './document/documentStore.ts'

const page: PageState = { looking: null, draft: null, refused: [], entries: {}, notices: [], view: defaultView }

/** A store of one open pier and of the page round it. */
export const createPierStore = (document: PierDocument) => createDocumentStore(document, page)

export type PierStore = ReturnType<typeof createPierStore>

/** The one store of the running page. */
export const pierStore: PierStore = createPierStore(pierKind.empty)
