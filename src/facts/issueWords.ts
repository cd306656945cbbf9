import type { Issue } from '../core/model/issue.ts'
import { allFields } from '../core/spec/fields.ts'
import type { UnitId } from '../core/units/factors.ts'
import { formatText } from '../core/units/format.ts'
import type { UnitSystem } from '../core/units/quantity.ts'
import { type Words, wordsOf } from '../words/index.ts'

/** The unit that the field of a path is told in, where it has one of its own. */
const unitAt = (path: string, system: UnitSystem): UnitId | undefined => {
  const field = allFields.find((one) => one.path === path)
  return field?.type === 'number' ? field.unit?.[system] : undefined
}

const facts = (value: Issue['got'], issue: Issue, system: UnitSystem): string => {
  if (value === undefined) return ''
  const unit = unitAt(issue.path, system)
  if (typeof value === 'number' && issue.quantity) return formatText(value, issue.quantity, system, unit === undefined ? {} : { unit })
  if (typeof value === 'number') return formatText(value, 'count', system)
  return wordsOf('choices')[issue.path]?.[value] ?? value
}

/** What an input is called; a path that is no input's is said as it stands. */
export const fieldLabel = (path: string): string =>
  Object.hasOwn(wordsOf('fields'), path) ? wordsOf('fields')[path as keyof Words['fields']].label : path

/** A number of more digits than anyone reads keeps three. A file may hold what is no text at all. */
const readable = (said: unknown): string =>
  String(said).replace(/\d\.\d{4,}(?=e)/, (digits) => String(Number(Number(digits).toPrecision(3))))

/** What may be typed at a path where nothing could be read; a length has examples of its own. */
const boundsAt = (path: string, system: UnitSystem): string => {
  const field = allFields.find((one) => one.path === path)
  if (field?.type !== 'number' || field.quantity === 'length') return ''
  const unit = field.unit?.[system]
  const say = (value: number): string => formatText(value, field.quantity, system, unit === undefined ? {} : { unit })
  return wordsOf('app').fields.between(say(field.min), say(field.max))
}

/** An issue as one or two sentences in the reader's units. */
export const issueText = (issue: Issue, system: UnitSystem): string => {
  const sentence = Object.hasOwn(wordsOf('issues'), issue.code) ? wordsOf('issues')[issue.code as keyof Words['issues']] : null
  if (!sentence) return `${fieldLabel(issue.path)}: ${issue.code}`
  return sentence({
    field: fieldLabel(issue.path),
    got: readable(facts(issue.got, issue, system)),
    limit: issue.code === 'not-a-number' ? boundsAt(issue.path, system) : readable(facts(issue.limit, issue, system)),
  })
}
