import type { Field } from '../core/model/field.ts'
import type { PierSpec } from '../core/model/spec.ts'
import { allFields, visibleFields } from '../core/spec/fields.ts'
import { valueAt } from '../core/spec/path.ts'

/** An input of one pier. `field` is null where this pier has no such input. */
export type InputCell = Readonly<{
  field: Field | null
  value: unknown
  /** Set otherwise than in the first pier. Where either has no such input there is nothing to set. */
  differs: boolean
}>
/** An input that is not the same in all piers, by its path. */
export type InputRow = Readonly<{ path: string; cells: readonly InputCell[] }>

const isSame = (a: unknown, b: unknown): boolean => {
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a), Math.abs(b))
  return a === b
}

/** Of an optional part only whether it is there counts here; what it is made of has rows of its own. */
const plain = (field: Field, value: unknown): unknown => (field.type === 'part' ? value !== null : value)
/** Is there at this path a part that a pier may have or lack? */
export const isPart = (path: string): boolean => allFields.some((field) => field.path === path && field.type === 'part')

/** An input inside a part that the pier does not have: the part's own row says so. */
const isInAbsentPart = (spec: PierSpec, path: string): boolean =>
  path
    .split('.')
    .slice(0, -1)
    .some((_, i, steps) => valueAt(spec, steps.slice(0, i + 1).join('.')) === null)

/** Inputs that pick a picture of chance and are nothing of the pier. */
const ofChance: readonly string[] = ['placing.pattern']

/** Inputs in which piers differ, in building order. Shape: rows x piers. The first pier is what the others are held against. */
export function inputRows(specs: readonly PierSpec[]): readonly InputRow[] {
  const [first] = specs
  if (!first) return []
  const shown = specs.map((spec) => new Map(visibleFields(spec).map((field) => [field.path, field] as const)))
  const paths = [...new Set(allFields.map((field) => field.path))].filter((path) => !ofChance.includes(path))
  return paths.flatMap((path): InputRow[] => {
    const found = specs.map((spec, i) => {
      const field = shown[i]?.get(path)
      // A pier that has no place for a part has none of it.
      return { field: field ?? null, value: field ? plain(field, valueAt(spec, path)) : isPart(path) ? false : undefined }
    })
    const there = found.filter(({ field }) => field !== null)
    if (there.length === 0) return []
    const varies = (isPart(path) ? found : there).some(({ value }, _, all) => !isSame(value, all[0]?.value))
    const lacks = !isPart(path) && found.some(({ field }, i) => field === null && !isInAbsentPart(specs[i] ?? first, path))
    if (!varies && !lacks) return []
    const base = found[0]
    const isSet = (field: Field | null | undefined): boolean => field != null || isPart(path)
    const differs = (cell: (typeof found)[number]): boolean => isSet(cell.field) && isSet(base?.field) && !isSame(cell.value, base?.value)
    return [{ path, cells: found.map((cell) => ({ ...cell, differs: differs(cell) })) }]
  })
}
