import type { PierDocument } from '../../core/model/spec.ts'
import type { AppState } from '../appState.ts'
import { isKept } from '../document/opened.ts'
import type { PierStore } from '../store.ts'
import { openDocument } from './document.ts'
import { dropDraft } from './draft.ts'
import { notify } from './notices.ts'
import { putRight } from './view.ts'

const unsettled = { draft: null, refused: [], entries: {} } as const

export const isLooking = (state: Pick<AppState, 'looking'>): boolean => state.looking !== null

/** Shows a pier to look at. The open pier, its note, its place and its undo steps stay as they are, and nothing can be changed meanwhile. */
export const lookAt = (store: PierStore, looking: PierDocument): void => {
  dropDraft(store)
  putRight(store)
  store.setState({ looking, ...unsettled })
}

/** Back to the open pier, as it was. */
export const stopLooking = (store: PierStore): void => {
  putRight(store)
  store.setState({ looking: null, ...unsettled })
}

/** The pier that is looked at becomes the open one, as one undo step. The one that was open is set aside unless it is kept elsewhere. */
export const takeLooked = (store: PierStore): void => {
  const before = store.getState()
  if (before.looking === null) return
  openDocument(store, before.looking)
  if (!isKept(before)) notify(store, { code: 'pier-set-aside' })
}
