import type { Issue, Result } from '../model/issue.ts'
import type { PierDocument, PierSpec } from '../model/spec.ts'
import { outOfBounds } from './bounds.ts'
import { dimensions } from './dimensions.ts'
import { barRules, verticalBarRules } from './rules/barRules.ts'
import { bracketRules } from './rules/bracketRules.ts'
import { fillRules } from './rules/fillRules.ts'
import { holeRules, siteRules } from './rules/holeRules.ts'
import { lifeRules } from './rules/lifeRules.ts'
import { postRules } from './rules/postRules.ts'
import type { Rule } from './rules/rule.ts'
import { topRules } from './rules/topRules.ts'
import { deepFreeze } from './path.ts'
import { stillWritten } from './written.ts'

const rules: readonly Rule[] = [siteRules, holeRules, postRules, fillRules, bracketRules, barRules, verticalBarRules, topRules, lifeRules]

/** What can't be built as set, and what can but should be looked at: every conflict between fields, each at the field to change. */
export function buildable(spec: PierSpec): readonly Issue[] {
  const d = dimensions(spec)
  return rules.flatMap((rule) => rule(spec, d))
}

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
