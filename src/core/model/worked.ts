import type { SourceId } from '../engineering/sources.ts'
import type { QuantityKind } from '../units/quantity.ts'
import type { CheckId, ReasonId } from './saidIds.ts'

/** How well the weakest thing that a number rests on was verified. Order: strongest first. */
export const standingsInOrder = [
  'definition',
  'read',
  'published, recomputed',
  'computed here',
  'abstract only',
  'secondary',
  'common practice',
  'from memory',
  'assumed here',
] as const
export type Standing = (typeof standingsInOrder)[number]

/** A named input to a formula. `symbol` is TeX. */
export type Term = Readonly<{ symbol: string; name: string; value: number; quantity: QuantityKind }>

/** A number that can show its work. `value` is coherent SI; `quantity` says how to print it. */
export type Worked = Readonly<{
  /** Key into the text table ("answers"), kebab case. */
  id: string
  value: number
  quantity: QuantityKind
  /** TeX, with the symbols of `inputs`. */
  formula: string
  inputs: readonly Term[]
  sources: readonly SourceId[]
  standing: Standing
  method?: 'closed form' | 'integrated' | undefined
}>

/**
 * One link of the load path, or one other check. `counted` says whether a standard lets the number be used:
 * a link that is not counted has no capacity; it is neither zero nor a guess, and `why` is a key into the text table.
 */
export type Check = Readonly<{
  id: CheckId
  group: 'uplift-soil' | 'uplift-connection' | 'uplift-post' | 'uplift-concrete' | 'bearing' | 'lateral' | 'frost' | 'detail'
  where: readonly string[]
  worked: readonly Worked[]
  /** The worked number that is the allowable, when one may be stated. */
  allowable: Worked | null
  why?: ReasonId
  counted: 'counted' | "engineer's judgement" | 'not counted' | 'upper bound'
  /** A limit or a load to hold the allowable against, and the ratio demand / allowable. */
  demand?: Worked
  ratio?: number
  /** For a check of a choice instead of a number: the values of the field at `path`, and whether what is asked is reached. */
  choice?: Readonly<{ path: string; is: string; asked: string; reached: boolean }>
  /** Is it a condition for something that a code lets one leave out, and no duty? */
  condition?: true
  sources: readonly SourceId[]
  standing: Standing
}>
