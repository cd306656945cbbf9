import type { AskedQuantity, FieldGroup, Word } from '../fields/node.ts'
import type { UnitId } from '../units/factors.ts'
import type { UnitSystem } from '../units/quantity.ts'
import type { PierSpec } from './spec.ts'

export type { FieldGroup } from '../fields/node.ts'

/** One input with its path, as panels, checks, file and link use it. Read off the tree of declarations. */
export type Field = Readonly<{
  /** Dotted path into the spec: 'hole.bell.diameter'. */
  path: string
  group: FieldGroup
  /** Panels show the field, and validation requires it, only when this holds. */
  visibleIf?: (spec: PierSpec) => boolean
  /** Its key in a link, and what a silent link means. */
  link: string
  silent: Word
  /** Value of the first pier, and of a part or kind that comes in; of a part, whether it is there. */
  start: Word | boolean
  /** Where a value comes from that a person gives here. */
  given: 'typed' | 'drawing'
}> &
  (
    | Readonly<{
        type: 'number'
        quantity: AskedQuantity
        min: number
        max: number
        step: Readonly<Record<UnitSystem, number>>
        nullable?: boolean
        /** Unit that the value is shown in and a bare number has, where it is not the one of its quantity: feet for a span. */
        unit?: Readonly<Record<UnitSystem, UnitId>>
      }>
    | Readonly<{ type: 'choice'; choices: readonly (string | number)[]; nullable?: boolean }>
    /** An optional part, null or an object whose own fields follow; `initial` fills it when it is switched on. */
    | Readonly<{ type: 'part'; initial: unknown }>
  )

export type FieldOf<T extends Field['type']> = Extract<Field, { type: T }>
