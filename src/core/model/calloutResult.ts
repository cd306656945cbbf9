import type { QuantityKind } from '../units/quantity.ts'
import type { SourceId } from '../engineering/sources.ts'

export const calloutItemIds = [
  'diameter',
  'depth',
  'strength',
  'mixed',
  'encasement',
  'bar-through',
  'bar-size',
  'section',
  'treatment',
  'bracket',
  'uplift',
  'frost',
  'soil',
] as const
/** What of a drawing a pier is held against. A key into the text table. */
export type CalloutItemId = (typeof calloutItemIds)[number]

/** `meets`: not below the figure entered. `not needed`: the drawing does not ask for it. Nothing here says that a pier may be built. */
export type CalloutVerdict = 'meets' | 'falls short' | "can't be verified" | 'not needed' | 'not on the drawing'

/** One side of a comparison: a number, or a word from one of the text tables. */
export type CalloutValue =
  | Readonly<{ as: 'number'; value: number; quantity: QuantityKind }>
  /** One of the choices of the field at `path`. */
  | Readonly<{ as: 'choice'; path: string; choice: string }>
  /** A key into the drawing's own words. */
  | Readonly<{ as: 'word'; word: string }>

/** What a difference does, in a number: `id` is a key into the text table. Negative: less than as drawn. */
export type Consequence = Readonly<{ id: string; value: number; quantity: QuantityKind }>

export type CalloutItem = Readonly<{
  id: CalloutItemId
  /** Null when it is not on the drawing. */
  drawn: CalloutValue | null
  /** Null when there is nothing of the kind in this pier, or no value that may be stated. */
  set: CalloutValue | null
  /** Set less drawn, SI, of the quantity of both; null where they are no numbers. */
  difference: number | null
  /** Allowed below the figure drawn, SI; null where none can be entered. */
  tolerance: number | null
  verdict: CalloutVerdict
  /** Why, in one sentence: a key into the text table. */
  why: string
  consequences: readonly Consequence[]
  /** What would show it: keys into the text table. */
  verify: readonly string[]
  /** Zones and parts it is about, the first one first. */
  where: readonly string[]
  sources: readonly SourceId[]
}>

export type CalloutResult = Readonly<{
  overall: 'as drawn' | 'not as drawn' | "can't be confirmed as drawn"
  /** Items that the drawing speaks of and that were held against the pier. */
  checked: number
  items: readonly CalloutItem[]
}>
