import type { Issue, Result } from '../model/issue.ts'
import type { PierDocument, PierSpec } from '../model/spec.ts'
import { outOfBounds } from './bounds.ts'
import { buildable } from './buildable.ts'
import { deepFreeze } from './freeze.ts'
import { stillWritten } from './written.ts'

const isError = (issue: Issue): boolean => issue.severity === 'error'

const known = new WeakMap<PierSpec, readonly Issue[]>()

/**
 * Every issue of a pier: fields outside their bounds, conflicts between fields, warnings. Errors mean that it can't be drawn. Looked for
 * once for as long as the spec is held: whoever shows a document asks again what its making has found.
 */
export function validateSpec(spec: PierSpec): readonly Issue[] {
  const issues = known.get(spec) ?? issuesOf(spec)
  known.set(spec, issues)
  return issues
}

function issuesOf(spec: PierSpec): readonly Issue[] {
  const fields = outOfBounds(spec)
  // A value that is no number or no choice would make nonsense of every comparison, and a count beyond its bounds a loop without end.
  const comparable = fields.every(({ code, quantity }) => (code === 'below-minimum' || code === 'above-maximum') && quantity !== 'count')
  return comparable ? [...fields, ...buildable(spec)] : fields
}

/** The document, frozen, of a pier that can be built, with its warnings; else every error and no document. */
export function makeDocument(document: PierDocument): Result<PierDocument> {
  const { spec, written } = document
  const issues = validateSpec(spec)
  const errors = issues.filter(isError)
  if (errors.length > 0) return { ok: false, issues: errors }
  return { ok: true, value: deepFreeze({ ...document, written: stillWritten(spec, written) }), issues }
}
