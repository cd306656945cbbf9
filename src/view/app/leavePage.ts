import { commitDraft } from '../../state/actions/draft.ts'
import type { PierStore } from '../../state/store.ts'

/** What is half typed or half dragged when the page goes away is entered first, and with it the note is written. */
export const settleOnLeave = (store: PierStore): void =>
  window.addEventListener('pagehide', () => {
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur()
    commitDraft(store)
  })
