import type { Result } from '../model/issue.ts'
import type { PierDocument, PierSpec, SoilMechanism } from '../model/spec.ts'
import { pierFields } from './pier/pier.ts'
import { makeDocument } from './validate.ts'

const { least: shortestReason, most } = pierFields.fields.judgement.fields.reason
export const longestReason = most

/**
 * Uses a soil mechanism other than the least one, for a reason that is typed; null goes back to the least. The reason stays in the file and
 * is never in a link.
 */
export function setJudgement(document: PierDocument, mechanism: SoilMechanism | null, reason: string): Result<PierDocument> {
  const judged = (judgement: PierSpec['judgement']) => makeDocument({ ...document, spec: { ...document.spec, judgement } })
  if (mechanism === null) return judged(null)
  const text = reason.trim()
  const refuse = (code: string, limit: number): Result<PierDocument> => ({
    ok: false,
    issues: [{ code, severity: 'error', path: 'judgement.reason', got: text.length, limit }],
  })
  if (text.length < shortestReason) return refuse('reason-too-short', shortestReason)
  if (text.length > longestReason) return refuse('text-too-long', longestReason)
  return judged({ mechanism, reason: text })
}
