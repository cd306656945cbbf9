import type { SourceId } from '../engineering/sources.ts'
import type { QuantityKind } from '../units/quantity.ts'
import type { CalloutResult, CalloutValue, CalloutVerdict, DrawingReason } from './calloutResult.ts'
import type { Order } from './result.ts'
import type { ReasonId } from './saidIds.ts'
import type { Role } from './solid.ts'
import type { Check, Standing, Worked } from './worked.ts'

/** Links of the load path, from the post down into the ground, as a pull travels. */
export const chainGroups = ['uplift-post', 'uplift-connection', 'uplift-concrete', 'uplift-soil'] as const
/** In the order in which people ask: does it sink, does it lean, does frost lift it, and the details. */
export const otherGroups = ['bearing', 'lateral', 'frost', 'detail'] as const

/**
 * What a fact belongs to. `uplift` is the whole load path and `drawing` the whole drawing: one fact each, their links and items in groups
 * of their own. `stand-off` holds the checks of a bracketed post's end, which belong beside the wood.
 */
export type FactGroup =
  | 'uplift'
  | 'headline'
  | Check['group']
  | 'stand-off'
  | 'quantity'
  | 'hole'
  | 'depth'
  | 'exposure'
  | 'exposure-area'
  | 'drawing'
  | 'drawing-item'

/** A number in coherent SI, a range of them, one of the choices of a field, or a word. */
export type FactValue = CalloutValue | Readonly<{ as: 'range'; low: number; high: number; quantity: QuantityKind }>

/** How a fact stands. A key of the words for it; for a condition the words are by its reason. */
export type Verdict =
  | CalloutVerdict
  | CalloutResult['overall']
  | 'as asked'
  | 'not as asked'
  | 'condition met'
  | 'condition not met'
  | Exclude<Check['counted'], 'not counted'>

/** The shape that a verdict is told by, besides its word. */
export type VerdictMark = 'meets' | 'short' | 'counted' | 'unverified' | 'unneeded' | 'judgement' | 'bound'

/** One further figure of a fact: a weight beside a volume, a length of what touches the wood, what a difference does. A key of words. */
export type FactFigure = Readonly<{ id: string; value: FactValue }>

/** One thing that is said of a pier, whoever prints it: panel, comparison, paper, file or voice. Ids are keys of words, one to a group. */
export type Fact = Readonly<{
  id: string
  group: FactGroup
  /** What is there; null where nothing may be stated. */
  value: FactValue | null
  /** What it is held against: a load, a limit, what the drawing asks; null where it is held against nothing. */
  limit: FactValue | null
  /** Is the limit a load that nobody has entered? */
  isEstimate: boolean
  /** Limit over value; null without either. */
  ratio: number | null
  /** Null for what needs no standard to be counted: a volume, a depth. */
  counted: Check['counted'] | null
  standing: Standing | null
  /** Why it stands as it does: a key of words. */
  reason: ReasonId | DrawingReason | null
  /** Null where nothing is judged. */
  verdict: Verdict | null
  sources: readonly SourceId[]
  /** Zones and parts of the picture that it is about, the first one first. */
  drawn: readonly string[]
  /** Ids of the facts that it comes from: the link that governs, or those that are not counted. */
  restsOn: readonly string[]
  figures: readonly FactFigure[]
  /** Its work: steps, then the number that is its value and the one that is its limit, where they have any. */
  work: Readonly<{ steps: readonly Worked[]; value: Worked | null; limit: Worked | null }>
  /** Of a link: must the pull pass it, is it a way to count the ground that is not in use, or a bound shown for scale? */
  link?: Readonly<{ place: 'needed' | 'spare' | 'bound'; governs: boolean }>
  /** Of a quantity: what it is made of, and the ways to buy it, any one of which will do. */
  role?: Role
  orders?: readonly Order[]
  /** Of an item of the drawing: value less limit, what is allowed of it, and what would show the item (keys of words). */
  difference?: FactValue | null
  tolerance?: FactValue | null
  shownBy?: readonly string[]
}>
