import type { StepCheckId, StepId } from '../../core/model/saidIds.ts'
import { wordsOf } from '../../words/index.ts'

/** What is done in a step of building. */
export const stepText = (id: StepId): string => wordsOf('steps')[id]
/** What is checked at it. */
export const checkText = (id: StepCheckId): string => wordsOf('build').checks[id]
/** What goes wrong at it. */
export const wrongText = (id: StepId): string => wordsOf('build').wrong[id]
