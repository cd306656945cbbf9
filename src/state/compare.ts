import { createStore } from 'zustand/vanilla'
import type { FillId, PierDocument } from '../core/model/spec.ts'
import type { CompareRowId } from './compareRows.ts'

/** A pier in the comparison: the one that is open, it with another method, or one brought along. */
export type Pick = 'own' | `method:${FillId}` | `brought:${number}`

export const fewestPiers = 2
export const mostPiers = 4

/** What is compared and how it is looked at. Nothing of it is saved with a pier, and nothing is undone. */
export type CompareState = Readonly<{
  isOpen: boolean
  /** In the order shown; null while nobody has picked: the piers that everybody starts from. */
  picks: readonly Pick[] | null
  /** Somebody has set the order by hand; until then a pier that is added takes its place in the fixed order. */
  isMoved: boolean
  /** Piers from elsewhere, a pick's number is their place here. Never reordered; null once taken out. */
  brought: readonly (PierDocument | null)[]
  /** Which pier a narrow screen shows, by its place. */
  column: number
  hiddenRows: readonly CompareRowId[]
  rowOrder: 'fixed' | 'differing-first'
  /** Full screen, one row at a time, by its place among the rows shown; null when not projected. */
  projected: number | null
  /** Year at which wet wood and the way of rain are shown; null: they are not. */
  year: number | null
}>

export const firstCompare: CompareState = {
  isOpen: false,
  picks: null,
  isMoved: false,
  brought: [],
  column: 0,
  hiddenRows: [],
  rowOrder: 'fixed',
  projected: null,
  year: null,
}

export const createCompareStore = () => createStore<CompareState>()(() => firstCompare)
export type CompareStore = ReturnType<typeof createCompareStore>

/** The one comparison of the running page. */
export const compareStore: CompareStore = createCompareStore()

/** Opens it, with wet wood shown at a year where it was shown before. */
export const openCompare = (store: CompareStore, year: number | null = null): void =>
  store.setState({ isOpen: true, column: 0, projected: null, year })
export const closeCompare = (store: CompareStore): void => store.setState({ isOpen: false, projected: null })
