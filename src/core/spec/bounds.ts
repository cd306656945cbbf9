import type { Field } from '../model/field.ts'
import type { Issue } from '../model/issue.ts'
import type { PierSpec } from '../model/spec.ts'
import { allFields } from './fields.ts'
import type { IssueCode } from './issueCodes.ts'
import { valueAt } from './path.ts'
import { shown } from './issueCodes.ts'

/** Rounding that a converted bound may carry, relative. */
const rounding = 1e-12
const slack = (limit: number) => Math.abs(limit) * rounding

/** A length other than 0 that is thinner than this is a slip of the keyboard, and no body can be made of it [m]. Set here, no source. */
const thinnest = 1e-4

/** What is wrong with one field's value taken alone; null when nothing is. */
export function fieldIssue(field: Field, value: unknown): Issue | null {
  const issue = (code: IssueCode, facts: Partial<Issue> = {}): Issue => ({ code, severity: 'error', path: field.path, ...facts })
  if (field.type === 'part' || (field.nullable && value === null)) return null
  if (field.type === 'choice') {
    const isChoice = field.choices.some((choice) => choice === value)
    return isChoice ? null : issue('not-a-choice', { got: shown(value), limit: field.choices.join(', ') })
  }
  const { min, max, quantity } = field
  if (typeof value !== 'number' || !Number.isFinite(value)) return issue('not-finite', { got: shown(value), quantity })
  if (value < min - slack(min)) return issue('below-minimum', { got: value, limit: min, quantity })
  if (value > max + slack(max)) return issue('above-maximum', { got: value, limit: max, quantity })
  if (quantity === 'length' && value !== 0 && Math.abs(value) < thinnest)
    return issue('next-to-nothing', { got: value, limit: thinnest, quantity })
  if (quantity === 'count' && !Number.isInteger(value)) return issue('not-whole', { got: value, quantity })
  return null
}

/**
 * Every field of this pier whose value is not one of its choices or not within its bounds. A value that is kept while its field is
 * not shown (the rise of a top that is flat for now) is looked at too.
 */
export function outOfBounds(spec: PierSpec): readonly Issue[] {
  const seen = new Set<string>()
  const kept: Field[] = []
  const found: Issue[] = []
  for (const field of allFields) {
    if (field.visibleIf?.(spec) ?? true) {
      seen.add(field.path)
      const issue = fieldIssue(field, valueAt(spec, field.path))
      if (issue !== null) found.push(issue)
    } else kept.push(field)
  }
  for (const field of kept) {
    const value = seen.has(field.path) ? undefined : valueAt(spec, field.path)
    const issue = value === undefined || value === null ? null : fieldIssue(field, value)
    if (issue !== null) found.push(issue)
  }
  return found
}

/** The same for a job whose shape is not right yet: whatever can be looked at alone. `read` gives a path's value, undefined for none. */
export const outOfBoundsAlone = (read: (field: Field) => unknown): readonly Issue[] => {
  const paths = new Set<string>()
  return allFields.flatMap((field) => {
    if (field.type !== 'number' || paths.has(field.path)) return []
    paths.add(field.path)
    const value = read(field)
    return value === undefined ? [] : (fieldIssue(field, value) ?? [])
  })
}
