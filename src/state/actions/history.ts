import type { PierStore } from '../store.ts'
import { dropDraft } from './drag.ts'

const settled = { draft: null, refused: [], entries: {} } as const

/** One gesture back. What was half typed or half dragged is dropped with it. */
export const undo = (store: PierStore): void => {
  dropDraft(store)
  store.temporal.getState().undo()
  store.setState(settled)
}

/** One gesture forward again. */
export const redo = (store: PierStore): void => {
  dropDraft(store)
  store.temporal.getState().redo()
  store.setState(settled)
}

export const canUndo = (store: PierStore): boolean => store.temporal.getState().pastStates.length > 0
export const canRedo = (store: PierStore): boolean => store.temporal.getState().futureStates.length > 0
