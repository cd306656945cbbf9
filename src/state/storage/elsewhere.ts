import type { Holder } from '../document/holder.ts'
import { type Kept, keptOf } from '../document/opened.ts'
import { valueIn } from './stored.ts'

/** What one tab tells the others about a saved pier. */
export type Told = Readonly<{ kind: 'saved' | 'removed'; id: string; revision: number }>

const isTold = (value: unknown): value is Told => {
  const kind = valueIn(value, 'kind')
  return (
    (kind === 'saved' || kind === 'removed') && typeof valueIn(value, 'id') === 'string' && Number.isSafeInteger(valueIn(value, 'revision'))
  )
}

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

/** Does what another tab did to a saved document leave what is kept of an opening without its record? */
const isTouched = ({ id, place }: Kept, told: Told): boolean =>
  place !== null && id === told.id && (told.kind === 'removed' || told.revision !== place.revision)

/**
 * Says so when the open document is saved or removed in another tab. Nothing of it changes by that and saving asks; but what lies on the
 * shelf is no longer what this tab shows, so nobody may call it saved.
 */
export const listenElsewhere = (holder: Holder): (() => void) =>
  hearOthers((told) => {
    const state = holder.state()
    for (const [lineage, kept] of Object.entries(state.kept))
      if (isTouched(kept, told)) holder.markKept(Number(lineage), { ...kept, document: null })
    if (isTouched(keptOf(state), told)) holder.notify({ code: 'changed-elsewhere' })
  })
