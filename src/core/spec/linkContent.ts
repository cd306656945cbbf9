import type { Field } from '../model/field.ts'
import type { PierDocument } from '../model/spec.ts'
import { fields } from './fields.ts'
import { linkTable } from './linkTable.ts'
import { valueAt } from './path.ts'
import { shortText } from './writeJob.ts'

/** One value of a link. */
export type Word = string | number | null

/** The field of a path. */
export const fieldBy: ReadonlyMap<string, Field> = new Map([...fields].reverse().map((field) => [field.path, field]))

/** What a link would say of one field, silent value or not; undefined when this pier has no such field. '=' marks a text not typed. */
function wordFor({ spec, written }: PierDocument, path: string): Word | undefined {
  const field = fieldBy.get(path)
  const value = valueAt(spec, path)
  if (field === undefined || value === undefined) return undefined
  if (field.type === 'part') return value === null ? 0 : 1
  if (typeof value !== 'number' || field.type === 'choice' || field.quantity === 'count') return value as Word
  return written[path] ?? `=${shortText(value, field.quantity)}`
}

/** The pier, without name and note, as a short text: a flat list of keys and values that differ from the silent ones. */
export function linkContent(document: PierDocument): string {
  const words = linkTable.flatMap(([path, key, silent]): Word[] => {
    const word = wordFor(document, path)
    return word === undefined || word === silent || word === `=${silent}` ? [] : [key, word]
  })
  return JSON.stringify(words)
}
