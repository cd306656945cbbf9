import type { PierSpec } from '../../core/model/spec.ts'
import { type InputCell, isPart } from '../../state/compareInputs.ts'
import { compare as words } from '../../text/en/compare.ts'
import { text } from '../../text/index.ts'
import type { Say } from '../hooks/useUnits.ts'

const named: Readonly<Record<string, (id: string) => string | undefined>> = {
  'fill.kind': (id) => text.fills[id as PierSpec['fill']['kind']]?.label,
  'support.bracket.kind': (id) => text.brackets[id as keyof typeof text.brackets]?.label,
}

/** The value of an input as a reader says it. */
export function valueWords(path: string, { field, value }: InputCell, say: Say): string {
  if (field === null) return isPart(path) ? words.table.absent : words.table.hasNone
  if (field.type === 'part') return value === true ? words.table.present : words.table.absent
  if (value === null) return text.fields[path as keyof typeof text.fields]?.none ?? text.app.fields.none
  if (field.type === 'number') return typeof value === 'number' ? say(value, field.quantity) : String(value)
  return named[path]?.(String(value)) ?? text.choices[path]?.[String(value)] ?? String(value)
}
