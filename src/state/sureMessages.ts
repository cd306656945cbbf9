import type { PierSpec } from '../core/model/spec.ts'
import type { Assumption } from '../core/uncertainty/assumptions.ts'
import type { Study, SureResult } from '../core/uncertainty/sureResult.ts'

/** What the page asks of the worker. Runs are told apart by number; a run that was stopped answers nothing more. */
export type SureOrder =
  | Readonly<{ kind: 'start'; run: number; spec: PierSpec; assumptions: readonly Assumption[]; study: Study }>
  | Readonly<{ kind: 'stop'; run: number }>

/** What the worker answers. */
export type SureNews =
  | Readonly<{ kind: 'progress'; run: number; done: number }>
  | Readonly<{ kind: 'done'; run: number; result: SureResult }>
  | Readonly<{ kind: 'failed'; run: number; why: string }>
