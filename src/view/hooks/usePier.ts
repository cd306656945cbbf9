import { useStore } from 'zustand'
import type { PierResult } from '../../core/model/result.ts'
import type { PierSpec } from '../../core/model/spec.ts'
import type { AppState } from '../../state/appState.ts'
import { shownResult, shownSpec } from '../../state/derived.ts'
import { pierStore } from '../../state/store.ts'

/** One piece of the state; the selector must give the same reference for the same state. */
export const usePier = <T>(select: (state: AppState) => T): T => useStore(pierStore, select)

/** The pier on show: the draft while a drag goes on. */
export const useSpec = (): PierSpec => usePier(shownSpec)
export const useResult = (): PierResult => usePier(shownResult)

/** Documents that undo and redo could bring back. */
export const useHistory = (): Readonly<{ past: number; future: number }> => {
  const past = useStore(pierStore.temporal, (history) => history.pastStates.length)
  const future = useStore(pierStore.temporal, (history) => history.futureStates.length)
  return { past, future }
}
