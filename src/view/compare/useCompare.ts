import { useMemo } from 'react'
import { useStore } from 'zustand'
import { type CompareState, compareStore } from '../../state/compare.ts'
import { type ComparedPier, comparedPiers } from '../../state/compareSet.ts'
import { seenDocument } from '../../state/derived.ts'
import { usePier } from '../hooks/usePier.ts'

/** One piece of the comparison; the selector must give the same reference for the same state. */
export const useCompare = <T>(select: (state: CompareState) => T): T => useStore(compareStore, select)

/** The piers side by side, in the order shown. */
export function useComparedPiers(): readonly ComparedPier[] {
  const picks = useCompare((state) => state.picks)
  const brought = useCompare((state) => state.brought)
  const own = usePier(seenDocument)
  return useMemo(() => comparedPiers({ picks, brought }, own), [picks, brought, own])
}
