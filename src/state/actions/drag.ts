import { setNumber } from '../../core/spec/edit.ts'
import type { PierStore } from '../store.ts'
import { refuse, showDraft } from './commit.ts'
import { flushDrag, keepDrag, waitingDrag } from './draft.ts'

/** Runs `task` at the next frame; at once where nothing is drawn (no browser). */
const nextFrame = (task: () => void): number | null => {
  if (typeof requestAnimationFrame === 'function') return requestAnimationFrame(task)
  task()
  return null
}

const setTo = (store: PierStore, path: string, value: number | null): void => {
  const { document, draft } = store.getState()
  const result = setNumber(draft ?? document, path, value)
  if (result.ok) showDraft(store, result.value, path)
  else refuse(store, path, null, result.issues)
}

/**
 * A value on its way, SI; null for none. Many calls within one frame make one draft. A value that can't be built leaves the
 * last good draft standing and says why.
 */
export const dragField = (store: PierStore, path: string, value: number | null): void => {
  const waiting = waitingDrag(store)
  if (waiting?.path === path) {
    waiting.value = value
    return
  }
  flushDrag(store)
  const drag = { path, value, frame: null as number | null, apply: () => setTo(store, path, drag.value) }
  keepDrag(store, drag)
  drag.frame = nextFrame(() => flushDrag(store))
}
