import type { PierResult } from '../core/model/result.ts'
import type { AppState } from './appState.ts'
import { shownSteps } from './shownSteps.ts'
import { shownResult } from './derived.ts'

const none: ReadonlySet<string> = new Set()
let last: Readonly<{ result: PierResult; step: number; hidden: ReadonlySet<string> }> | null = null

/** Zones that are not there yet at the step of building that is looked at; the same set for the same step of the same pier. */
export const hiddenZones = (state: Pick<AppState, 'document' | 'looking' | 'draft' | 'view'>): ReadonlySet<string> => {
  const { time } = state.view
  if (time?.stretch !== 'build') return none
  const result = shownResult(state)
  if (last?.result !== result || last.step !== time.step) {
    const steps = shownSteps(state)
    const there = steps[Math.min(time.step, steps.length - 1)]?.zones
    const hidden = result.zones.flatMap(({ id }) => (there?.includes(id) === false ? [id] : []))
    last = { result, step: time.step, hidden: hidden.length > 0 ? new Set(hidden) : none }
  }
  return last.hidden
}

let present: Readonly<{ result: PierResult; hidden: ReadonlySet<string>; shown: PierResult }> | null = null

/** A result with the zones that are there: what words and lengths over the picture go by. */
export const withoutZones = (result: PierResult, hidden: ReadonlySet<string>): PierResult => {
  if (hidden.size === 0) return result
  if (present?.result !== result || present.hidden !== hidden)
    present = { result, hidden, shown: { ...result, zones: result.zones.filter(({ id }) => !hidden.has(id)) } }
  return present.shown
}
