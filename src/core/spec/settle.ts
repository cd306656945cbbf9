import type { Issue } from '../model/issue.ts'
import type { PierSpec } from '../model/spec.ts'
import { fieldAt, allFields } from './fields.ts'
import type { IssueCode } from './issueCodes.ts'
import { toSI } from '../units/factors.ts'
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
  'crown-too-steep',
  'dish-too-deep',
  'rim-too-low',
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
    return mayDrop(part) && allFields.some((field) => field.path === part && field.type === 'part') ? withValueAt(spec, part, null) : spec
  }
  const { code, limit, got } = issue
  const isKnown = isOneOf(followed, code) && typeof limit === 'number' && typeof got === 'number' && fieldAt(spec, issue.path) !== undefined
  if (!isKnown || !mayMove(issue.path)) return spec
  const value = issue.quantity === 'length' ? halfInches(limit, got > limit) : limit
  return valueAt(spec, issue.path) === value ? spec : withValueAt(spec, issue.path, value)
}

/** The limit, brought to a half inch on its own side: a size that can be measured. */
function halfInches(limit: number, down: boolean): number {
  const halves = limit / toSI(0.5, 'in')
  return toSI((down ? Math.floor(halves + 1e-6) : Math.ceil(halves - 1e-6)) / 2, 'in')
}
