import { pierKind } from '../core/documents/pier.ts'
import { openDocument } from './actions/document.ts'
import { commitDraft } from './actions/draft.ts'
import { dismiss, notify } from './actions/notices.ts'
import { type Holder, holderOf } from './document/holder.ts'
import { perSpec } from './perSpec.ts'
import type { PierStore } from './store.ts'

/** A store of a pier as whatever keeps documents sees it; one holder a store. */
export const pierHolder: (store: PierStore) => Holder = perSpec((store) =>
  holderOf(pierKind, store, {
    open: (document, kept) => openDocument(store, document, kept),
    settle: () => commitDraft(store),
    notify: (notice) => notify(store, notice),
    dismiss: (code) => dismiss(store, code),
  }),
)
