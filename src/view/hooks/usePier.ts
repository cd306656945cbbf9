import { useMemo } from 'react'
import { useStore } from 'zustand'
import type { Fact } from '../../core/model/fact.ts'
import type { PierResult } from '../../core/model/result.ts'
import type { PierSpec } from '../../core/model/spec.ts'
import { type Units, unitsFor } from '../../core/units/reader.ts'
import type { AppState } from '../../state/appState.ts'
import { derived, factsAbout, meantSpec, shownResult, shownSpec } from '../../state/derived.ts'
import { isLooking } from '../../state/actions/look.ts'
import { pierStore } from '../../state/store.ts'

/** One piece of the state; the selector must give the same reference for the same state. */
export const usePier = <T>(select: (state: AppState) => T): T => useStore(pierStore, select)

/** The pier as it is meant, for the inputs: the draft while a drag goes on. */
export const useSpec = (): PierSpec => usePier(meantSpec)
/** The pier on show, with the mistakes that are made on it. */
export const useShownSpec = (): PierSpec => usePier(shownSpec)
export const useResult = (): PierResult => usePier(shownResult)
/** Everything that is said of it. */
export const useFacts = (): readonly Fact[] => factsAbout(useResult())

/** Is the pier on show only looked at? Then nothing of it can be changed. */
export const useIsLooking = (): boolean => usePier(isLooking)

/** Documents that undo and redo could bring back. */
export const useHistory = (): Readonly<{ past: number; future: number }> => {
  const past = useStore(pierStore.temporal, (history) => history.pastStates.length)
  const future = useStore(pierStore.temporal, (history) => history.futureStates.length)
  return { past, future }
}

/** How numbers are written for this reader. */
export const useUnits = (): Units => {
  const system = usePier((state) => state.view.units)
  return useMemo(() => unitsFor(system), [system])
}

/** The facts of the pier as it was before the last change of it, or before the drag that goes on; null where this opening has none. */
export const useFactsBefore = (): readonly Fact[] | null => {
  const past = useStore(pierStore.temporal, (history) => history.pastStates.at(-1))
  const before = usePier((state) => {
    if (state.looking || state.view.mistakes.length > 0) return null
    return state.draft ? state.document : past?.lineage === state.lineage ? (past.document ?? null) : null
  })
  return before && factsAbout(derived(before.spec))
}
