import type { NoteStorage } from './note.ts'
import { parsed, valueIn } from './stored.ts'

/**
 * What this browser remembers of the shelf outside the shelf itself: how many piers there were, so that it is seen when they are gone;
 * how many savings since all was last taken along as a file; and what the browser said when it was asked to keep them.
 */
export type Witness = Readonly<{ count: number; unfiled: number; persisted: boolean | null }>

const key = 'pierglass.shelf'
const nothing: Witness = { count: 0, unfiled: 0, persisted: null }
const isCount = (value: unknown): value is number => Number.isSafeInteger(value) && Number(value) >= 0

export const readWitness = (storage: NoteStorage | null): Witness => {
  try {
    const value = parsed(storage?.getItem(key) ?? '')
    const [count, unfiled, persisted] = ['count', 'unfiled', 'persisted'].map((name) => valueIn(value, name))
    return {
      count: isCount(count) ? count : 0,
      unfiled: isCount(unfiled) ? unfiled : 0,
      persisted: typeof persisted === 'boolean' ? persisted : null,
    }
  } catch {
    return nothing
  }
}

export const keepWitness = (storage: NoteStorage | null, change: Partial<Witness>): Witness => {
  const next = { ...readWitness(storage), ...change }
  try {
    storage?.setItem(key, JSON.stringify(next))
  } catch {
    // The shelf goes on without a witness.
  }
  return next
}
