import { setNumber } from '../../core/spec/edit.ts'
import type { PierStore } from '../store.ts'
import { refuse, showDraft } from './commit.ts'

type Drag = { path: string; value: number | null; frame: number | null }
const drags = new WeakMap<PierStore, Drag>()

/** Runs `task` at the next frame; at once where nothing is drawn (no browser). */
const nextFrame = (task: () => void): number | null => {
  if (typeof requestAnimationFrame === 'function') return requestAnimationFrame(task)
  task()
  return null
}

const apply = (store: PierStore): void => {
  const drag = drags.get(store)
  if (!drag) return
  drags.delete(store)
  const { document, draft } = store.getState()
  const result = setNumber(draft ?? document, drag.path, drag.value)
  if (result.ok) showDraft(store, result.value, drag.path)
  else refuse(store, drag.path, null, result.issues)
}

/**
 * A value on its way, SI; null for none. Many calls within one frame make one draft. A value that can't be built leaves the
 * last good draft standing and says why.
 */
export const dragField = (store: PierStore, path: string, value: number | null): void => {
  const waiting = drags.get(store)
  if (waiting && waiting.path === path) {
    waiting.value = value
    return
  }
  if (waiting) flush(store)
  drags.set(store, { path, value, frame: null })
  const frame = nextFrame(() => apply(store))
  const placed = drags.get(store)
  if (placed) placed.frame = frame
}

const flush = (store: PierStore): void => {
  const drag = drags.get(store)
  if (!drag) return
  if (drag.frame !== null) cancelAnimationFrame(drag.frame)
  apply(store)
}

/** The drag is let go: what it reached becomes the document, one undo step. Nothing happens when nothing was dragged. */
export const commitDraft = (store: PierStore): void => {
  flush(store)
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
