import type { StepCheckId, StepId } from './saidIds.ts'

/** Something done wrong while a pier is built, that nobody sees once it is finished. */
export type MistakeId =
  | 'undersized-hole'
  | 'loose-bottom'
  | 'off-plumb'
  | 'bar-missed'
  | 'bar-too-short'
  | 'bar-too-high'
  | 'flat-top'
  | 'dished-top'
  | 'low-fill'

/** One step of building a pier. All keys are keys into the text tables. */
export type BuildStep = Readonly<{
  /** Key of a kind's record. */
  id: StepId
  /** Cautions that come before anything else is said of the step. */
  dangers: readonly string[]
  /** Zones that are there once the step is done; native ground is there from the start. */
  zones: readonly string[]
  /** Those of them that can no longer be seen once it is done. */
  hiddenAfter: readonly string[]
  checks: readonly StepCheckId[]
  /** What can go wrong at this step of this pier. */
  wrong: readonly MistakeId[]
  /** Is the hole to be looked at by the inspector before the next step? */
  inspection: boolean
}>
