import type { Field } from '../model/field.ts'
import type { PierDocument } from '../model/spec.ts'
import { powerOfTen, type UnitId } from '../units/factors.ts'
import { parseQuantity } from '../units/parse.ts'
import type { QuantityKind } from '../units/quantity.ts'
import { fields } from './fields.ts'
import { linkTable } from './linkTable.ts'
import { valueAt } from './path.ts'
import { shortText } from './writeJob.ts'

/** One value of a link. */
export type Word = string | number | null

/** Units in which a number is only shifted, so that it reads back to the last bit. */
const exactUnit: Partial<Readonly<Record<QuantityKind, UnitId>>> = {
  length: 'm',
  area: 'm2',
  volume: 'm3',
  weight: 'N',
  force: 'N',
  strength: 'Pa',
  pressure: 'Pa',
  unitWeight: 'N/m3',
  gradient: 'Pa/m',
  angle: 'rad',
  slope: '%',
  ratio: '%',
  speed: 'm/s',
}

/** The field of a path. */
export const fieldBy: ReadonlyMap<string, Field> = new Map([...fields].reverse().map((field) => [field.path, field]))

/** A short text that reads as the value, to the last bit where there is one. */
function untyped(value: number, quantity: QuantityKind): string {
  const short = shortText(value, quantity)
  const unit = exactUnit[quantity]
  const [digits = '', power] = value.toExponential().split('e')
  const exact = unit === undefined ? short : `${digits}e${Number(power) - (powerOfTen[unit] ?? 0)} ${unit}`
  return [short, exact].find((text) => readsExactly(text, quantity, value)) ?? short
}

const readsExactly = (text: string, quantity: QuantityKind, value: number): boolean => {
  const reading = parseQuantity(text, quantity)
  return reading.ok && reading.value === value
}

/** What a link would say of one field, silent value or not; undefined when this pier has no such field. '=' marks a text not typed. */
function wordFor({ spec, written }: PierDocument, path: string): Word | undefined {
  const field = fieldBy.get(path)
  const value = valueAt(spec, path)
  if (field === undefined || value === undefined) return undefined
  if (field.type === 'part') return value === null ? 0 : 1
  if (typeof value !== 'number' || field.type === 'choice' || field.quantity === 'count') return value as Word
  return written[path] ?? `=${untyped(value, field.quantity)}`
}

/** The pier, without name and note, as a short text: a flat list of keys and values that differ from the silent ones. */
export function linkContent(document: PierDocument): string {
  const words = linkTable.flatMap(([path, key, silent]): Word[] => {
    const word = wordFor(document, path)
    return word === undefined || word === silent || word === `=${silent}` ? [] : [key, word]
  })
  return JSON.stringify(words)
}
