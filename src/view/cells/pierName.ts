import type { PierSpec } from '../../core/model/spec.ts'
import type { SayNumber } from '../../core/units/reader.ts'
import { type InputCell, isPart } from '../../state/compareInputs.ts'
import type { ComparedPier } from '../../state/compareSet.ts'
import { pierStore } from '../../state/store.ts'
import { type Words, wordsOf } from '../../words/index.ts'

export type PierName = Readonly<{ title: string; tag: string | null }>

/** The pier that the comparison starts from: one's own, or one from a link that is only looked at. */
const ownTag = (given: string): string => {
  const words = wordsOf('compare')
  if (pierStore.getState().looking) return wordsOf('looking').tag
  return given === '' ? words.own : `${words.own}: ${given}`
}

/** What a pier of the comparison is called: by its method, or by the name that somebody gave it, with the other one beside. */
export function pierName({ pick, method, pier }: ComparedPier): PierName {
  const label = wordsOf('fills')[method].label
  const given = pier?.document.name ?? ''
  if (pick === 'own') return { title: label, tag: ownTag(given) }
  if (pick.startsWith('method:')) return { title: label, tag: null }
  return { title: given === '' ? wordsOf('compare').brought(Number(pick.slice('brought:'.length)) + 1) : given, tag: label }
}

/** The name alone, where there is room for one. */
export const pierTitle = (compared: ComparedPier): string => pierName(compared).title

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
