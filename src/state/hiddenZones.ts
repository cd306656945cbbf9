import type { BuildStep } from '../core/model/buildStep.ts'
import type { PierResult } from '../core/model/result.ts'
import type { AppState } from './appState.ts'
import { perSpec } from './perSpec.ts'
import { shownSteps } from './shownSteps.ts'
import { shownResult } from './derived.ts'

const none: ReadonlySet<string> = new Set()

/** For each step of building a pier the zones that are not there yet. */
const hiddenIn = perSpec((result: PierResult) =>
  perSpec((steps: readonly BuildStep[]) =>
    steps.map((step): ReadonlySet<string> => {
      const hidden = result.zones.flatMap(({ id }) => (step.zones.includes(id) ? [] : [id]))
      return hidden.length > 0 ? new Set(hidden) : none
    }),
  ),
)

/** Zones that are not there yet at the step of building that is looked at; the same set for the same step of the same pier. */
export const hiddenZones = (state: Pick<AppState, 'document' | 'looking' | 'draft' | 'view'>): ReadonlySet<string> => {
  const { time } = state.view
  if (time?.stretch !== 'build') return none
  const steps = shownSteps(state)
  return hiddenIn(shownResult(state))(steps)[Math.min(time.step, steps.length - 1)] ?? none
}

const without = perSpec((result: PierResult) =>
  perSpec((hidden: ReadonlySet<string>): PierResult => ({ ...result, zones: result.zones.filter(({ id }) => !hidden.has(id)) })),
)

/** A result with the zones that are there: what words and lengths over the picture go by. */
export const withoutZones = (result: PierResult, hidden: ReadonlySet<string>): PierResult =>
  hidden.size === 0 ? result : without(result)(hidden)
