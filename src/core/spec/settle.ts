import type { Issue } from '../model/issue.ts'
import type { PierSpec } from '../model/spec.ts'
import { fieldAt } from './fields.ts'
import type { IssueCode } from './issueCodes.ts'
import { valueAt, withValueAt } from './path.ts'
import { validateSpec } from './validate.ts'

/**
 * Limits that a change of method or part may bring the fields it touches up or down to. Each of these fields follows from the
 * method; a size that somebody measured or drew (hole, slope, post) is never moved.
 */
const followed: readonly IssueCode[] = [
  'foot-below-base',
  'foot-above-grade',
  'collar-too-high',
  'pad-too-thick',
  'bracket-too-deep',
  'bar-below-foot',
  'bar-above-top',
  'bar-longer-than-hole',
  'below-minimum',
  'above-maximum',
]
/** Parts that a new method has no place for. */
const dropped: readonly IssueCode[] = [
  'bars-with-bracket',
  'vertical-bars-without-concrete',
  'vertical-bars-too-short',
  'vertical-bars-meet-post',
]

/** Fields whose limit is no value of their own: the part they belong to goes instead. */
const partOf: Readonly<Record<string, string>> = {
  'bars.count': 'bars',
  'verticalBars.cover': 'verticalBars',
  'verticalBars.count': 'verticalBars',
}

const isOneOf = (codes: readonly IssueCode[], code: string) => codes.some((one) => one === code)

/**
 * Brings fields that a change has made impossible to the limit their issue names. What can't be settled stays.
 *
 * @param mayMove fields that the change may take along
 * @param mayDrop parts that it may take out
 */
export function settled(spec: PierSpec, mayMove: (path: string) => boolean, mayDrop: (part: string) => boolean): PierSpec {
  let current = spec
  for (let turn = 0; turn < 8; turn++) {
    const next = validateSpec(current).reduce(
      (moved, issue) => (issue.severity === 'error' ? settleOne(moved, issue, mayMove, mayDrop) : moved),
      current,
    )
    if (next === current) return current
    current = next
  }
  return current
}

function settleOne(spec: PierSpec, issue: Issue, mayMove: (path: string) => boolean, mayDrop: (part: string) => boolean): PierSpec {
  const part = partOf[issue.path] ?? issue.path
  if (isOneOf(dropped, issue.code) || issue.path in partOf) {
    return mayDrop(part) && fieldAt(spec, part)?.type === 'part' ? withValueAt(spec, part, null) : spec
  }
  const isKnown = isOneOf(followed, issue.code) && typeof issue.limit === 'number' && fieldAt(spec, issue.path) !== undefined
  return isKnown && mayMove(issue.path) && valueAt(spec, issue.path) !== issue.limit ? withValueAt(spec, issue.path, issue.limit) : spec
}
