import fc from 'fast-check'
import type { PierResult } from '../../../src/core/model/result.ts'
import type { PierDocument, PierSpec } from '../../../src/core/model/spec.ts'
import type { Check } from '../../../src/core/model/worked.ts'
import { validateSpec } from '../../../src/core/spec/validate.ts'
import { arbitraryPier } from '../../arbitraryPier.ts'

/** Drawn once: making a pier that can be built takes longer than all that is asked of it. */
const piers: readonly PierDocument[] = fc.sample(arbitraryPier(), { numRuns: 300, seed: 11 })

/** Asks something of every pier; a failure shows the pier. */
export const ofEach = (ask: (spec: PierSpec, i: number, document: PierDocument) => void): void =>
  piers.forEach((document, i) => {
    try {
      ask(document.spec, i, document)
    } catch (reason) {
      throw new Error(`${reason instanceof Error ? reason.message : String(reason)}\nof ${JSON.stringify(document.spec)}`, {
        cause: reason,
      })
    }
  })

export const rounding = 1e-7
export const canBeBuilt = (spec: PierSpec): boolean => validateSpec(spec).every((issue) => issue.severity !== 'error')

/** Value of every check that has one, by id. */
export const values = (result: PierResult, pick: (check: Check) => boolean): Map<string, number> =>
  new Map(result.checks.flatMap((check) => (pick(check) && check.allowable ? [[check.id, check.allowable.value]] : [])))

/** Ids whose value fell from one pier to the other. */
export const fallen = (before: Map<string, number>, after: Map<string, number>): string[] =>
  [...before].flatMap(([id, value]) => ((after.get(id) ?? value) < value * (1 - rounding) - rounding ? [id] : []))
