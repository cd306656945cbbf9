import { hearOthers } from './elsewhere.ts'
import { filesAndDrafts } from './filesAndDrafts.ts'
import { savePier } from './savePier.ts'
import type { ShelfParts } from './shelf.ts'
import { shelfDesk } from './shelfDesk.ts'
import { tendPiers } from './tendPiers.ts'

/** The shelf of saved piers: its state, and everything that can be done with it. Nothing is called saved before it lies in the store. */
export const createShelf = (parts: ShelfParts) => {
  const desk = shelfDesk(parts)
  const { state, set, say, refresh } = desk
  return {
    state,
    refresh,
    ...savePier(desk),
    ...tendPiers(desk),
    ...filesAndDrafts(desk),
    forget: () => say(null),
    /** The store itself has something to say: an old tab holds it, or a newer page has made it over. */
    heard: (code: 'held' | 'newer') => set({ trouble: code }),
    unheard: (code: 'held' | 'newer') => state.getState().trouble === code && set({ trouble: null }),
    end: hearOthers(() => void refresh()),
  }
}

export type Shelf = ReturnType<typeof createShelf>
