import type { MistakeId } from '../../model/buildStep.ts'

/** Place, 0 to 2, of the one option that holds. */
export type Holds = 0 | 1 | 2

/** Questions that may be asked before something is shown, each with the place of the option that holds: what is shown then says the same. */
export const holds = {
  years: { buried: 2, above: 2 },
  month: { mixed: 2, dry: 2 },
  mistakes: { 'undersized-hole': 1, 'loose-bottom': 1, 'bar-too-high': 0, 'bar-too-short': 1, 'flat-top': 1 } satisfies Partial<
    Record<MistakeId, Holds>
  >,
} as const satisfies Readonly<Record<string, Readonly<Record<string, Holds>>>>
