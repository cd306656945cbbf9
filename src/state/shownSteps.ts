import { buildSteps } from '../core/derive/build/buildSteps.ts'
import type { BuildStep } from '../core/model/buildStep.ts'
import type { PierResult } from '../core/model/result.ts'
import type { PierSpec } from '../core/model/spec.ts'
import type { AppState } from './appState.ts'
import { meantSpec, shownResult } from './derived.ts'

let last: Readonly<{ spec: PierSpec; result: PierResult; steps: readonly BuildStep[] }> | null = null

/** The steps of building the pier on show: those of the pier as it is meant, with what stands after each as it is built. */
export const shownSteps = (state: Pick<AppState, 'document' | 'looking' | 'draft' | 'view'>): readonly BuildStep[] => {
  const spec = meantSpec(state)
  const result = shownResult(state)
  if (last?.spec !== spec || last.result !== result) last = { spec, result, steps: buildSteps(spec, result) }
  return last.steps
}
