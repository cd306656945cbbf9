import type { PierResult } from '../core/model/result.ts'
import type { AppState } from './appState.ts'

const none: ReadonlySet<string> = new Set()

/** Zones that are not there yet at the moment looked at; the same set for the same step of the same pier. */
export const hiddenZones = (_state: Pick<AppState, 'document' | 'draft' | 'view'>): ReadonlySet<string> => none

let present: Readonly<{ result: PierResult; hidden: ReadonlySet<string>; shown: PierResult }> | null = null

/** A result with the zones that are there: what words and lengths over the picture go by. */
export const withoutZones = (result: PierResult, hidden: ReadonlySet<string>): PierResult => {
  if (hidden.size === 0) return result
  if (present?.result !== result || present.hidden !== hidden)
    present = { result, hidden, shown: { ...result, zones: result.zones.filter(({ id }) => !hidden.has(id)) } }
  return present.shown
}
