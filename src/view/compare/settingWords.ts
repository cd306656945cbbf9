import type { PierSpec } from '../../core/model/spec.ts'
import { type InputCell, isPart } from '../../state/compareInputs.ts'
import { type Words, wordsOf } from '../../words/index.ts'
import type { SayNumber } from '../../core/units/reader.ts'

const named: Readonly<Record<string, (id: string) => string | undefined>> = {
  'fill.kind': (id) => wordsOf('fills')[id as PierSpec['fill']['kind']]?.label,
  'support.bracket.kind': (id) => wordsOf('brackets')[id as keyof Words['brackets']]?.label,
}

/** The value of an input as a reader says it. */
export function settingWords(path: string, { field, value }: InputCell, say: SayNumber): string {
  const words = wordsOf('compare')
  if (field === null) return isPart(path) ? words.table.absent : words.table.hasNone
  if (field.type === 'part') return value === true ? words.table.present : words.table.absent
  if (value === null) return wordsOf('fields')[path as keyof Words['fields']]?.none ?? wordsOf('app').fields.none
  if (field.type === 'number') return typeof value === 'number' ? say(value, field.quantity) : String(value)
  return named[path]?.(String(value)) ?? wordsOf('choices')[path]?.[String(value)] ?? String(value)
}
