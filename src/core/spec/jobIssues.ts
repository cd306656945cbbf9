import type { z } from 'zod'
import type { Issue } from '../model/issue.ts'
import { unitNames } from '../units/factors.ts'
import { allFields } from './fields.ts'
import type { IssueCode } from './issueCodes.ts'
import { shown } from './issueCodes.ts'

/** What the library found, as issues of ours: one for each key, with the path into the spec. */
export const jobIssues = (found: readonly z.core.$ZodIssue[]): readonly Issue[] => found.flatMap(translate)

/** Path into the spec; 'pier' itself keeps its name. */
const pathOf = (path: readonly PropertyKey[]): string =>
  path
    .map(String)
    .filter((key, i) => i > 0 || key !== 'pier' || path.length === 1)
    .join('.')
const error = (code: IssueCode, path: string, facts: Partial<Issue> = {}): Issue => ({ code, severity: 'error', path, ...facts })
const typeName = (value: unknown): string => (value === null ? 'null' : Array.isArray(value) ? 'array' : typeof value)

function translate(issue: z.core.$ZodIssue): readonly Issue[] {
  const path = pathOf(issue.path)
  // JSON may write a number that no computer holds.
  if (typeof issue.input === 'number' && !Number.isFinite(issue.input)) return [error('not-finite', path)]
  switch (issue.code) {
    case 'custom':
      return [(issue.params as Readonly<{ issue: Issue }>).issue]
    case 'unrecognized_keys':
      return issue.keys.map((key) => error('unknown-key', pathOf([...issue.path, key]), { got: shown(key) }))
    case 'too_big':
      return [error('text-too-long', path, { got: typeof issue.input === 'string' ? issue.input.length : 0, limit: Number(issue.maximum) })]
    case 'invalid_value':
      if (issue.input === undefined) return [error('missing', path)]
      return [error('not-a-choice', path, { got: shown(issue.input), limit: issue.values.map(String).join(', ') })]
    case 'invalid_union':
      return [unmatched(issue.input, path)]
    case 'invalid_type':
      return [wrongType(issue.input, issue.expected, path)]
    default:
      return [error('wrong-type', path, { got: typeName(issue.input), limit: issue.code })]
  }
}

const choicesAt = (path: string): string =>
  allFields.flatMap((field) => (field.path === path && field.type === 'choice' ? [field.choices.join(', ')] : []))[0] ?? 'embedded, bracket'

/** A tagged object whose tag is missing or unknown; the path names the tag. */
function unmatched(input: unknown, path: string): Issue {
  const tag =
    typeof input === 'object' && input !== null && Object.hasOwn(input, 'kind') ? (input as Readonly<{ kind: unknown }>).kind : input
  if (tag === undefined || (typeof tag === 'object' && tag !== null)) return error('missing', path)
  return error('not-a-choice', path, { got: shown(tag), limit: choicesAt(path) })
}

function wrongType(input: unknown, expected: string, path: string): Issue {
  if (input === undefined) return error('missing', path)
  const field = allFields.find((one) => one.path === path)
  if (field?.type === 'number' && field.quantity !== 'count' && typeof input === 'number') {
    return error('missing-unit', path, { got: String(input), limit: unitNames(field.quantity), quantity: field.quantity })
  }
  return error('wrong-type', path, { got: typeName(input), limit: expected })
}
