import type { PierStore } from '../store.ts'
import { dropDraft } from './draft.ts'
import { stopLooking } from './look.ts'

const settled = { draft: null, refused: [], entries: {} } as const

/** One gesture back. What was half typed or half dragged is dropped with it. From a pier that is only looked at: back to the open one. */
export const undo = (store: PierStore): void => {
  dropDraft(store)
  if (store.getState().looking !== null) {
    stopLooking(store)
    return
  }
  store.temporal.getState().undo()
  store.setState(settled)
}

/** One gesture forward again. */
export const redo = (store: PierStore): void => {
  if (store.getState().looking !== null) return
  dropDraft(store)
  store.temporal.getState().redo()
  store.setState(settled)
}

export const canUndo = (store: PierStore): boolean => store.temporal.getState().pastStates.length > 0
export const canRedo = (store: PierStore): boolean => store.temporal.getState().futureStates.length > 0
