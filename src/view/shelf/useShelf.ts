import { createContext, useContext } from 'react'
import { useStore } from 'zustand'
import type { Shelf } from '../../state/storage/shelf.ts'
import type { ShelfState } from '../../state/storage/desk.ts'

export const ShelfContext = createContext<Shelf | null>(null)

/** The shelf that a part of the dialog works on. */
export const useShelf = (): Shelf => {
  const shelf = useContext(ShelfContext)
  if (!shelf) throw new Error('useShelf: no shelf above')
  return shelf
}

export const useShelfState = <T>(select: (state: ShelfState) => T): T => useStore(useShelf().state, select)
