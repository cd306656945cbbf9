import type { Issue } from '../../core/model/issue.ts'
import { formatText } from '../../core/units/format.ts'
import { type Words, wordsOf } from '../../words/index.ts'

const shown = (value: Issue['got'], { quantity }: Issue): string => {
  if (typeof value !== 'number') return value ?? ''
  if (quantity === undefined || quantity === 'count') return String(value)
  const us = formatText(value, quantity, 'us')
  const metric = formatText(value, quantity, 'metric')
  return us === metric ? us : `${us} = ${metric}`
}

const labelOf = (path: string): string =>
  Object.hasOwn(wordsOf('fields'), path) ? wordsOf('fields')[path as keyof Words['fields']].label : path === '' ? 'The job' : path

/** What an issue says, in both systems where they differ. */
export function issueMessage(issue: Issue): string {
  const facts = { field: labelOf(issue.path), got: shown(issue.got, issue), limit: shown(issue.limit, issue) }
  return Object.hasOwn(wordsOf('issues'), issue.code) ? wordsOf('issues')[issue.code as keyof Words['issues']](facts) : issue.code
}

/** A text for one line of a terminal: what steers one, or turns the direction of what follows, is spelled out. */
export const spelledOut = (line: string): string =>
  line.replace(/[\p{Cc}\p{Zl}\p{Zp}\p{Bidi_Control}]/gu, (sign) => `\\u${(sign.codePointAt(0) ?? 0).toString(16).padStart(4, '0')}`)

/** One line of standard error: `path: message (got …, limit …)`. */
export function issueLine(issue: Issue): string {
  const facts = [
    ...(issue.got === undefined ? [] : [`got ${shown(issue.got, issue)}`]),
    ...(issue.limit === undefined ? [] : [`limit ${shown(issue.limit, issue)}`]),
  ]
  return spelledOut(`${issue.path === '' ? 'job' : issue.path}: ${issueMessage(issue)} (${[issue.code, ...facts].join(', ')})`)
}
