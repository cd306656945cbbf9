import { useStore } from 'zustand'
import { type SureState, sureStore } from '../../../state/sure.ts'

/** One piece of the study's state; the selector must give the same reference for the same state. */
export const useSure = <T>(select: (state: SureState) => T): T => useStore(sureStore, select)
