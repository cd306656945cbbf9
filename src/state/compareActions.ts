import type { PierDocument } from '../core/model/spec.ts'
import { type CompareState, type CompareStore, fewestPiers, firstCompare, mostPiers, type Pick } from './compare.ts'
import type { CompareRowId } from './compareRows.ts'
import { inFixedOrder, picksOf } from './compareSet.ts'

const change = (store: CompareStore, part: Partial<CompareState>): void => store.setState(part)

/** Sets a pier beside the others or takes it away. Refused, with false, where fewer than two or more than four would stand. */
export function togglePick(store: CompareStore, own: PierDocument, pick: Pick): boolean {
  const state = store.getState()
  const picks = picksOf(state, own)
  const next = picks.includes(pick) ? picks.filter((one) => one !== pick) : [...picks, pick]
  if (next.length < fewestPiers || next.length > mostPiers) return false
  change(store, { picks: state.isMoved ? next : inFixedOrder(next), column: Math.min(state.column, next.length - 1) })
  return true
}

/** Moves the pier at a place by one to the left (-1) or the right (1). */
export function movePick(store: CompareStore, own: PierDocument, from: number, by: -1 | 1): void {
  const picks = [...picksOf(store.getState(), own)]
  const [moved, other] = [picks[from], picks[from + by]]
  if (moved === undefined || other === undefined) return
  picks[from] = other
  picks[from + by] = moved
  change(store, { picks, isMoved: true, column: from + by })
}

/** Back to the fixed order, with the piers that stand. */
export function fixedOrder(store: CompareStore): void {
  const { picks } = store.getState()
  change(store, { picks: picks && inFixedOrder(picks), isMoved: false, column: 0 })
}

/** Brings piers along: each stands beside the others while there is room; the rest can be picked. Returns how many stand. */
export function bringPiers(store: CompareStore, own: PierDocument, documents: readonly PierDocument[]): number {
  const state = store.getState()
  const picks = [...picksOf(state, own)]
  const fresh = documents.map((_, i): Pick => `brought:${state.brought.length + i}`)
  const room = fresh.slice(0, Math.max(0, mostPiers - picks.length))
  // A pier that somebody brings is meant to be seen: the last of the methods makes room for the first one.
  const first = fresh[0]
  if (room.length === 0 && first !== undefined) {
    picks.pop()
    room.push(first)
  }
  change(store, { brought: [...state.brought, ...documents], picks: [...picks, ...room] })
  return room.length
}

/** Lays a brought pier aside for good. */
export function dropBrought(store: CompareStore, place: number): void {
  const { brought, picks } = store.getState()
  change(store, {
    brought: brought.map((document, i) => (i === place ? null : document)),
    picks: picks?.filter((pick) => pick !== `brought:${place}`) ?? null,
  })
}

/** Only these piers, in this order: two to four saved ones. Refused, with false, for fewer or more. */
export function comparePiers(store: CompareStore, documents: readonly PierDocument[]): boolean {
  if (documents.length < fewestPiers || documents.length > mostPiers) return false
  change(store, { ...firstCompare, isOpen: true, brought: documents, picks: documents.map((_, i): Pick => `brought:${i}`) })
  return true
}

/** Shows wet wood and the way of rain at a year; null shows neither. */
export const showYear = (store: CompareStore, year: number | null): void => change(store, { year })
/** Only the pier on the page, and one more beside it. */
export const besideOwn = (store: CompareStore, document: PierDocument): void =>
  change(store, { ...firstCompare, isOpen: true, brought: [document], picks: ['own', 'brought:0'] })

export const showColumn = (store: CompareStore, column: number): void => change(store, { column })
export const setRowOrder = (store: CompareStore, rowOrder: CompareState['rowOrder']): void => change(store, { rowOrder })

export function setRowShown(store: CompareStore, row: CompareRowId, isShown: boolean): void {
  const { hiddenRows } = store.getState()
  if (isShown === !hiddenRows.includes(row)) return
  change(store, { hiddenRows: isShown ? hiddenRows.filter((one) => one !== row) : [...hiddenRows, row] })
}

/** Full screen at a row; null leaves it. */
export const project = (store: CompareStore, projected: number | null): void => change(store, { projected })
