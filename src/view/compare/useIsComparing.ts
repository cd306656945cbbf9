import { useStore } from 'zustand'
import { compareStore } from '../../state/compare.ts'

/** Piers are being compared; the picture of the one makes room. */
export const useIsComparing = (): boolean => useStore(compareStore, (state) => state.isOpen)
