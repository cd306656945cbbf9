import type { PierResult } from '../core/model/result.ts'

/** A check that the pier as built misses and the pier as meant does not: demand over what is there [1]. */
export type WorseCheck = Readonly<{ id: string; ratio: number }>

/** Checks that a mistake takes over their limit, in the order of the result. */
export const worseChecks = (meant: Pick<PierResult, 'checks'>, built: Pick<PierResult, 'checks'>): readonly WorseCheck[] =>
  built.checks.flatMap(({ id, ratio }) => {
    if (ratio === undefined || !(ratio > 1)) return []
    const before = meant.checks.find((one) => one.id === id)?.ratio
    return before !== undefined && before > 1 ? [] : [{ id, ratio }]
  })
