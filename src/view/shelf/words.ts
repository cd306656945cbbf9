import type { Issue } from '../../core/model/issue.ts'
import type { UnitSystem } from '../../core/units/quantity.ts'
import { locale, wordsOf } from '../../words/index.ts'
import { issueText } from '../../facts/issueWords.ts'

export const whenWords = (at: number | null): string =>
  at !== null && at > 0 ? new Date(at).toLocaleString(locale(), { dateStyle: 'medium', timeStyle: 'short' }) : '–'

export const nameWords = (name: string): string => (name.trim() === '' ? wordsOf('shelf').untitled : name)

/** An issue of the shelf or of a job in it. */
export const shelfIssue = (issue: Issue, system: UnitSystem): string => {
  const words = wordsOf('shelf')
  const own = Object.hasOwn(words.issues, issue.code) ? words.issues[issue.code] : undefined
  if (own === undefined) return issueText(issue, system)
  return issue.path === '' ? own : words.at(issue.path, own)
}
