import type { PierStore } from '../store.ts'

/** A value on its way, SI; null for none. `apply` makes a draft of what it has come to. */
type Drag = { readonly path: string; value: number | null; frame: number | null; readonly apply: () => void }
const drags = new WeakMap<PierStore, Drag>()

/** The drag that waits for its frame; undefined when none does. */
export const waitingDrag = (store: PierStore): Drag | undefined => drags.get(store)
export const keepDrag = (store: PierStore, drag: Drag): void => void drags.set(store, drag)

/** What waits for its frame is drafted now. */
export const flushDrag = (store: PierStore): void => {
  const drag = drags.get(store)
  if (!drag) return
  if (drag.frame !== null) cancelAnimationFrame(drag.frame)
  drags.delete(store)
  drag.apply()
}

/** The drag is let go: what it reached becomes the document, one undo step. Nothing happens when nothing was dragged. */
export const commitDraft = (store: PierStore): void => {
  flushDrag(store)
  const { draft } = store.getState()
  if (draft) store.setState({ document: draft, draft: null })
}

/** The drag is given up: the picture goes back to the document. */
export const dropDraft = (store: PierStore): void => {
  const drag = drags.get(store)
  if (drag?.frame != null) cancelAnimationFrame(drag.frame)
  drags.delete(store)
  if (store.getState().draft) store.setState({ draft: null })
}
