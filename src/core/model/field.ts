import type { UnitId } from '../units/factors.ts'
import type { QuantityKind } from '../units/quantity.ts'
import type { PierSpec } from './spec.ts'

export type FieldGroup = 'site' | 'hole' | 'post' | 'fill' | 'steel' | 'top' | 'concrete' | 'water' | 'loads' | 'drawing' | 'years'

/** One input: the only place where its bounds and step are written. Validation, JSON Schema and panels all read it. */
export type Field = Readonly<{
  /** Dotted path into the spec: 'hole.bell.diameter'. */
  path: string
  group: FieldGroup
  /** Panels show the field, and validation requires it, only when this holds. */
  visibleIf?: (spec: PierSpec) => boolean
}> &
  (
    | Readonly<{
        type: 'number'
        quantity: QuantityKind
        min: number
        max: number
        step: Readonly<{ us: number; metric: number }>
        nullable?: boolean
        /** Unit that the value is shown in and a bare number has, where it is not the one of its quantity: feet for a span. */
        unit?: Readonly<{ us: UnitId; metric: UnitId }>
      }>
    | Readonly<{ type: 'choice'; choices: readonly (string | number)[]; nullable?: boolean }>
    /** An optional part, null or an object whose own fields follow; `initial` fills it when it is switched on. */
    | Readonly<{ type: 'part'; initial: unknown }>
  )
