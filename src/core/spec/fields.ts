import { type FieldGroup, fieldGroups, type FieldNode, type Shape } from '../fields/node.ts'
import type { Field } from '../model/field.ts'
import type { PierSpec } from '../model/spec.ts'
import { valueAt } from './path.ts'
import { pierFields } from './pier/pier.ts'
import { conditions } from './placement.ts'

type Holds = (spec: PierSpec) => boolean
/** What a node takes from those that hold it; `holds` is null where every pier has it. */
type Place = Readonly<{ path: string; group: FieldGroup; given: Field['given']; holds: Holds | null }>
type Listed = Readonly<{ field: Field; after: string | undefined }>

/** Both at once, asked once of each pier for all the fields that share them. */
const both = (outer: Holds | null, inner: Holds): Holds => {
  let asked: PierSpec | null = null
  let answer = false
  return (spec) => {
    if (spec !== asked) {
      answer = (outer === null || outer(spec)) && inner(spec)
      asked = spec
    }
    return answer
  }
}

const listed = (shape: Shape, holder: Place): readonly Listed[] =>
  Object.entries(shape).flatMap(([key, node]) =>
    listedAt(node, {
      path: holder.path === '' ? key : `${holder.path}.${key}`,
      group: node.group ?? holder.group,
      given: node.given ?? holder.given,
      holds: node.when === undefined ? holder.holds : both(holder.holds, conditions[node.when]),
    }),
  )

/** A node's own input, where it is one, and those of what it holds. Words and what has no key in a link are asked elsewhere. */
function listedAt(node: FieldNode, place: Place): readonly Listed[] {
  const { path, group, given, holds } = place
  const { link, after } = node
  if (node.type === 'text') return []
  if (node.type === 'group') return listed(node.fields, place)
  const about = (at: string, start: Field['start']) => ({
    path: at,
    group,
    given,
    start,
    ...(holds === null ? {} : { visibleIf: holds }),
    link: link ?? '',
    silent: node.silent,
  })
  if (node.type === 'part') {
    if (link === undefined) return []
    const held = { ...place, holds: both(holds, (spec) => (valueAt(spec, path) ?? null) !== null) }
    return [{ field: { ...about(path, node.start !== null), type: 'part', initial: node.first }, after }, ...listed(node.fields, held)]
  }
  if (node.type === 'either') {
    const at = `${path}.kind`
    const own: Listed = { field: { ...about(at, node.start.kind), type: 'choice', choices: node.kinds.map(({ id }) => id) }, after }
    const kinds = node.kinds.flatMap(({ id, fields: shape }) =>
      listed(shape, { ...place, holds: both(holds, (spec) => valueAt(spec, at) === id) }),
    )
    return node.isAsked ? [own, ...kinds] : kinds
  }
  const nullable = node.nullable ? { nullable: true } : {}
  if (node.type === 'choice') return [{ field: { ...about(path, node.start), type: 'choice', choices: node.choices, ...nullable }, after }]
  const { quantity, min, max, step, unit } = node
  return [
    { field: { ...about(path, node.start), type: 'number', quantity, min, max, step, ...nullable, ...(unit ? { unit } : {}) }, after },
  ]
}

/** The list with each field that is asked out of its place put behind the one it names. */
function inAskedOrder(list: readonly Listed[]): readonly Field[] {
  const order = list.filter(({ after }) => after === undefined).map(({ field }) => field)
  for (const { field, after } of list) if (after !== undefined) order.splice(order.map(({ path }) => path).lastIndexOf(after) + 1, 0, field)
  return fieldGroups.flatMap((group) => order.filter((field) => field.group === group))
}

/**
 * Every input there is, in building order: ground, hole, post, fill, steel, top, concrete, water, loads, drawing, years. Bounds and steps are SI.
 * Two kinds may own a field of one path with other bounds; `visibleIf` leaves at most one of them at a time.
 */
export const allFields: readonly Field[] = inAskedOrder(listed(pierFields.fields, { path: '', group: 'site', given: 'typed', holds: null }))

/** The field of a path; the first of them where kinds share one. */
export const fieldBy: ReadonlyMap<string, Field> = new Map([...allFields].reverse().map((field) => [field.path, field]))

/** The inputs that this pier has, in building order. */
export const visibleFields = (spec: PierSpec): readonly Field[] => allFields.filter((field) => field.visibleIf?.(spec) ?? true)

/** The input at `path` that this pier has; undefined when it has none. */
export const fieldAt = (spec: PierSpec, path: string): Field | undefined =>
  allFields.find((field) => field.path === path && (field.visibleIf?.(spec) ?? true))
