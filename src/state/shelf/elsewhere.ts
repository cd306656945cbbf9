import { notify } from '../actions/notices.ts'
import { keptOf } from '../kept.ts'
import type { PierStore } from '../store.ts'

/** What one tab tells the others about a saved pier. */
export type Told = Readonly<{ kind: 'saved' | 'removed'; id: string; revision: number }>

const isTold = (value: unknown): value is Told =>
  typeof value === 'object' &&
  value !== null &&
  'kind' in value &&
  (value.kind === 'saved' || value.kind === 'removed') &&
  'id' in value &&
  typeof value.id === 'string' &&
  'revision' in value &&
  Number.isSafeInteger(value.revision)

const listeners = new Set<(told: Told) => void>()
let line: BroadcastChannel | null | undefined

/** One line for the page: what goes out on it does not come back. Null where the browser has none. */
const channel = (): BroadcastChannel | null => {
  if (line !== undefined) return line
  try {
    line = new BroadcastChannel('pierglass.shelf')
    line.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
      if (isTold(data)) for (const listener of listeners) listener(data)
    })
    // Outside a browser an open line would keep the process from ending.
    if ('unref' in line && typeof line.unref === 'function') line.unref()
  } catch {
    line = null
  }
  return line
}

export const tellOthers = (told: Told): void => channel()?.postMessage(told)

/** Told of every saved pier that another tab changes; gives back how to stop. */
export const hearOthers = (listener: (told: Told) => void): (() => void) => {
  channel()
  listeners.add(listener)
  return () => void listeners.delete(listener)
}

/** Says so when the open pier is saved or removed in another tab. Nothing of this tab changes by it; saving asks. */
export const listenElsewhere = (store: PierStore): (() => void) =>
  hearOthers(({ id, revision, kind }) => {
    const { place } = keptOf(store.getState())
    if (place?.id === id && (kind === 'removed' || revision !== place.revision)) notify(store, { code: 'changed-elsewhere' })
  })
