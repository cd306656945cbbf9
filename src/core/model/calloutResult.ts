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

/** Why a pier meets its drawing, or falls short of it. */
export type DrawingReason =
  | 'not-on-the-drawing'
  | 'hole-not-narrower'
  | 'hole-narrower'
  | 'not-less-deep'
  | 'less-deep'
  | 'below-drawn-frost'
  | 'above-drawn-frost'
  | 'site-freezes-deeper'
  | 'cores-not-below'
  | 'cores-below'
  | 'strength-of-dry-mix-unknown'
  | 'not-structural-concrete'
  | 'strength-not-below'
  | 'strength-below'
  | 'mixing-not-asked'
  | 'placed-dry'
  | 'no-mix-placed'
  | 'mixed-before-placing'
  | 'encasement-not-asked'
  | 'not-full-height'
  | 'full-height-of-dry-mix'
  | 'full-height-of-weak-fill'
  | 'full-height'
  | 'bar-not-asked'
  | 'bar-not-with-bracket'
  | 'no-bar-through'
  | 'bar-in-unknown-mix'
  | 'bar-through'
  | 'bar-not-in-concrete'
  | 'bar-not-thinner'
  | 'bar-thinner'
  | 'post-not-smaller'
  | 'post-smaller'
  | 'post-of-another-make'
  | 'treatment-not-weaker'
  | 'treatment-weaker'
  | 'bracket-is-drawn'
  | 'post-in-the-hole'
  | 'bracket-not-allowed'
  | 'no-bracket-used'
  | 'uplift-not-counted'
  | 'uplift-not-below'
  | 'uplift-not-below-judged'
  | 'uplift-below'
  | 'soil-of-ones-own'
  | 'soil-not-weaker'
  | 'soil-weaker'

/** What a difference from the drawing does. */
export type DrawingEffect =
  | 'hole-volume'
  | 'concrete-weight'
  | 'shaft-length'
  | 'below-frost'
  | 'site-frost'
  | 'strength'
  | 'concrete-breakout'
  | 'uncounted-weight'
  | 'unencased-length'
  | 'bar-area'
  | 'post-area'
  | 'uplift'
  | 'uplift-lacking'
  | 'soil-bearing'
  | 'soil-lateral'

/** What would show that a pier is as drawn. */
export type DrawingProof =
  | 'measure-hole'
  | 'measure-depth'
  | 'measure-top'
  | 'measure-post'
  | 'photo-before-filling'
  | 'photo-of-bar'
  | 'photo-of-pour'
  | 'bar-mark'
  | 'end-tag'
  | 'ticket'
  | 'cylinders'
  | 'cores'
  | 'bracket-report'
  | 'soil-report'
  | 'building-office'
  | 'engineer'

/** Set values that are words. */
export type DrawingWord =
  | 'dry-mix'
  | 'concrete'
  | 'flowable-fill'
  | 'no-concrete'
  | 'placed-dry'
  | 'no-mix'
  | 'mixed-before'
  | 'no-bar'
  | 'bar-there'
  | 'none'

/** One side of a comparison: a number, or a word from one of the text tables. */
export type CalloutValue =
  | Readonly<{ as: 'number'; value: number; quantity: QuantityKind }>
  /** One of the choices of the field at `path`. */
  | Readonly<{ as: 'choice'; path: string; choice: string }>
  /** A key into the drawing's own words. */
  | Readonly<{ as: 'word'; word: DrawingWord }>

/** What a difference does, in a number: `id` is a key into the text table. Negative: less than as drawn. */
export type Consequence = Readonly<{ id: DrawingEffect; value: number; quantity: QuantityKind }>

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
  why: DrawingReason
  consequences: readonly Consequence[]
  /** What would show it: keys into the text table. */
  verify: readonly DrawingProof[]
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
