import type { PierSpec } from '../core/model/spec.ts'
import type { Assumption } from '../core/uncertainty/assumptions.ts'
import type { Study, SureResult } from '../core/uncertainty/sureResult.ts'
import { simulation } from '../core/uncertainty/simulate.ts'

type Pace = Readonly<{
  /** Waits until others have had their turn: messages, painting. */
  breathe: () => Promise<void>
  isStopped: () => boolean
  onProgress: (done: number) => void
}>

/** A study step by step, with a breath between steps; null once it is stopped. */
export async function studyInSteps(
  { spec, assumptions, study }: Readonly<{ spec: PierSpec; assumptions: readonly Assumption[]; study: Study }>,
  { breathe, isStopped, onProgress }: Pace,
): Promise<SureResult | null> {
  const steps = simulation(spec, assumptions, study)
  for (let step = steps.next(); ; step = steps.next()) {
    if (isStopped()) return null
    if (step.done) return step.value
    onProgress(step.value)
    await breathe()
  }
}

/** What the page asks of the worker. Runs are told apart by number; a run that was stopped answers nothing more. */
export type SureOrder =
  | Readonly<{ kind: 'start'; run: number; spec: PierSpec; assumptions: readonly Assumption[]; study: Study }>
  | Readonly<{ kind: 'stop'; run: number }>

/** What the worker answers. */
export type SureNews =
  | Readonly<{ kind: 'progress'; run: number; done: number }>
  | Readonly<{ kind: 'done'; run: number; result: SureResult }>
  | Readonly<{ kind: 'failed'; run: number; why: string }>
