import type { Field } from '../model/field.ts'
import type { Origin, PierDocument, PierSpec } from '../model/spec.ts'
import { fieldAt, fieldBy, visibleFields } from './fields.ts'
import { isSameAt, valueAt } from './path.ts'

type Known = Pick<PierDocument, 'spec' | 'origins'>

/** Where a value came from as far as it tells itself: as the first pier has it, it is assumed; any other was given. */
function plainOrigin(field: Field, value: unknown): Origin {
  const start = field.type === 'part' ? value !== null : value
  return start === field.start ? 'assumed' : field.given
}

/** Where the value of an input came from. Throws at a path that is no input's. */
export function originOf({ spec, origins }: Known, path: string): Origin {
  const field = fieldAt(spec, path) ?? fieldBy.get(path)
  if (field === undefined) throw new Error(`originOf: no field '${path}'`)
  return origins[path] ?? plainOrigin(field, valueAt(spec, path))
}

/**
 * Origins after a change of the spec. What was given says so; what else the change moved is assumed, unless `brought` knows better: values that
 * came back, with their own origins. What stays keeps its own.
 */
export function originsAfter(
  before: Known,
  spec: PierSpec,
  given: readonly string[],
  brought?: Readonly<{ spec: unknown; origins: PierDocument['origins'] }>,
): PierDocument['origins'] {
  const stays = ([path]: readonly [string, Origin]) => !given.includes(path) && isSameAt(before.spec, spec, path)
  const origins = Object.fromEntries(Object.entries(before.origins).filter(stays))
  for (const field of visibleFields(spec)) {
    const { path } = field
    if (!given.includes(path) && isSameAt(before.spec, spec, path)) continue
    const plain = plainOrigin(field, valueAt(spec, path))
    const cameBack = brought !== undefined && isSameAt(brought.spec, spec, path)
    const origin = given.includes(path) ? field.given : cameBack ? (brought.origins[path] ?? plain) : 'assumed'
    if (origin !== plain) origins[path] = origin
  }
  return origins
}

/** The same for one value that was given and moved nothing else. */
export function originsGiven({ origins }: Known, spec: PierSpec, field: Field): PierDocument['origins'] {
  const { [field.path]: _, ...rest } = origins
  return plainOrigin(field, valueAt(spec, field.path)) === field.given ? rest : { ...rest, [field.path]: field.given }
}

/** Every input that another spec sets otherwise: what a change that somebody accepts gives. */
export const pathsChanged = (before: PierSpec, spec: PierSpec): readonly string[] =>
  visibleFields(spec).flatMap(({ path }) => (isSameAt(before, spec, path) ? [] : [path]))
