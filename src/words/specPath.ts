import type { FillId, PierSpec } from '../core/model/spec.ts'

type Leaf = string | number | boolean | null | undefined
/** Every dotted path into T, through every member of its unions. */
type PathOf<T> = T extends Leaf
  ? never
  : T extends object
    ? { [K in keyof T & string]: K | `${K}.${PathOf<T[K]> & string}` }[keyof T & string]
    : never

type Container =
  | 'site'
  | 'site.soil'
  | 'site.lower.soil'
  | 'hole'
  | 'post'
  | 'support'
  | 'support.bracket'
  | 'fill'
  | 'top'
  | 'concrete'
  | 'placing'
  | 'water'
  | 'life'
  | 'life.own'
  | 'life.factors'
  | 'life.months.temperature'
  | 'life.months.rainDays'
  | 'costs.prices'
  | `costs.prices.${FillId}`
  | 'loads'
  | 'sideways'
  | 'judgement'
  | 'judgement.mechanism'
  | 'judgement.reason'
  | 'callout.tolerance'
  | 'callout.number'
  | 'callout.date'
  | 'callout.notes'

/** Paths that a field may have: leaves and optional parts, read off the spec by the compiler. */
export type FieldPath = Exclude<PathOf<PierSpec>, Container>
