import { buildSteps } from '../core/derive/build/buildSteps.ts'
import type { BuildStep } from '../core/model/buildStep.ts'
import type { PierResult } from '../core/model/result.ts'
import type { PierSpec } from '../core/model/spec.ts'
import type { AppState } from './appState.ts'
import { meantSpec, shownResult } from './derived.ts'
import { perSpec } from './perSpec.ts'

const stepsOf = perSpec((result: PierResult) => perSpec((spec: PierSpec) => buildSteps(spec, result)))

/** The steps of building the pier on show: those of the pier as it is meant, with what stands after each as it is built. */
export const shownSteps = (state: Pick<AppState, 'document' | 'looking' | 'draft' | 'view'>): readonly BuildStep[] =>
  stepsOf(shownResult(state))(meantSpec(state))
