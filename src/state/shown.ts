import type { BuildStep } from '../core/model/buildStep.ts'
import type { PierResult } from '../core/model/result.ts'
import type { AppState, ViewSettings } from './appState.ts'
import { perSpec } from './perSpec.ts'
import { shownResult, meantSpec } from './derived.ts'
import { buildSteps } from '../core/derive/build/buildSteps.ts'
import type { PierSpec } from '../core/model/spec.ts'

/** A check that the pier as built misses and the pier as meant does not: demand over what is there [1]. */
type WorseCheck = Readonly<{ id: string; ratio: number }>

/** Checks that a mistake takes over their limit, in the order of the result. */
export const worseChecks = (meant: Pick<PierResult, 'checks'>, built: Pick<PierResult, 'checks'>): readonly WorseCheck[] =>
  built.checks.flatMap(({ id, ratio }) => {
    if (ratio === undefined || !(ratio > 1)) return []
    const before = meant.checks.find((one) => one.id === id)?.ratio
    return before !== undefined && before > 1 ? [] : [{ id, ratio }]
  })

const stepsOf = perSpec((result: PierResult) => perSpec((spec: PierSpec) => buildSteps(spec, result)))

/** The steps of building the pier on show: those of the pier as it is meant, with what stands after each as it is built. */
export const shownSteps = (state: Pick<AppState, 'document' | 'looking' | 'draft' | 'view'>): readonly BuildStep[] =>
  stepsOf(shownResult(state))(meantSpec(state))

const wetAlone = perSpec((layers: ViewSettings['layers']): ViewSettings['layers'] => ({ ...layers, wetness: true, dimensions: false }))

/**
 * Layers as they are shown. While years are looked at, what wets the wood is shown; and while it is, lengths step back: one thing at a
 * time. The same object for the same answer.
 */
export const shownLayers = ({ layers, time }: Pick<ViewSettings, 'layers' | 'time'>): ViewSettings['layers'] =>
  layers.wetness || time?.stretch === 'years' ? wetAlone(layers) : layers

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
