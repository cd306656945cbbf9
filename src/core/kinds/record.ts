import type { CautionId, StepId } from '../model/saidIds.ts'
import type { SourceId } from '../engineering/sources.ts'
import { startOfKind } from '../fields/makers.ts'
import type { OfKind, Shape } from '../fields/node.ts'
import type { BracketLegs, BracketPart, BracketSite, FillCounting, FillSite, Lift, Supply } from '../model/kind.ts'
import type { Role } from '../model/solid.ts'
import type { Metres } from '../units/quantity.ts'
import type { BracketSizes } from './bracket/plateParts.ts'

type Valued<Id extends string, S extends Shape> = OfKind<Readonly<{ id: Id; fields: S }>>

type FillRecord<Id extends string, S extends Shape> = Readonly<{
  id: Id
  support: 'embedded' | 'bracket'
  /** Fields of its own, as every field is declared. */
  fields: S
  /** Link keys of its two prices: first cost, and replacement under a standing building. Its words are keyed by its id. */
  prices: Readonly<{ first: string; replacement: string }>
  /** Bottom up, ending at grade or at the finished top. */
  lifts(fill: Valued<Id, S>, site: FillSite): readonly Lift[]
  /** Role of a lift to how it is ordered. */
  supply: Readonly<Partial<Record<Role, Supply>>>
  /** How mix that is placed dry gets its water: poured on by the crew, or left to the ground. Only of such kinds. */
  wetting?: 'from-the-top' | 'by-the-ground'
  /** Does the finished top (crown, rim) belong to this kind, or does it end at grade? */
  hasTop: boolean
  counting: FillCounting
  /** The same once cores taken from the mix as placed are not below the code's limits; only where cores can tell. */
  cored?: FillCounting
  /** Width that bears sideways: the hole (bonded concrete) or the post alone, IBC 1807.3.3 options. */
  lateralWidth: 'hole' | 'post'
  /** Construction steps, keys into the text table. */
  steps: readonly StepId[]
  /** Things that go wrong, questions to ask, cautions: keys into the text table. */
  cautions: readonly CautionId[]
  sources: readonly SourceId[]
}>

/**
 * A way to fill the hole: one file, one record, one line in index.ts, and its words. Views draw from the record; nothing outside this folder
 * compares a kind's id. `defaults`: what it holds when it is chosen.
 */
export type FillKind<Id extends string = string, S extends Shape = Shape> = FillRecord<Id, S> & Readonly<{ defaults: Valued<Id, S> }>
export const declareFill = <const Id extends string, const S extends Shape>(record: FillRecord<Id, S>): FillKind<Id, S> => ({
  ...record,
  defaults: startOfKind<Readonly<{ id: Id; fields: S }>>(record),
})

type BracketRecord<Id extends string, S extends Shape> = Readonly<{
  id: Id
  fields: S
  parts(bracket: BracketSizes, site: BracketSite): readonly BracketPart[]
  /** Half-width of the level landing it needs on the concrete [m]. */
  landingRadius(bracket: BracketSizes, site: BracketSite): Metres
  /** Shear planes at each bolt and where the steel is, for the yield equations. */
  bolts: 'side plates' | 'knife plate'
  /** How the steel is held in the concrete. */
  anchorage: 'legs cast in' | 'anchored after curing'
  /** Null where nothing is cast in. */
  legs: BracketLegs | null
  steps: readonly StepId[]
  cautions: readonly CautionId[]
  sources: readonly SourceId[]
}>

/** A bracket, in the same way. */
export type BracketKind<Id extends string = string, S extends Shape = Shape> = BracketRecord<Id, S> & Readonly<{ defaults: Valued<Id, S> }>
export const declareBracket = <const Id extends string, const S extends Shape>(record: BracketRecord<Id, S>): BracketKind<Id, S> => ({
  ...record,
  defaults: startOfKind<Readonly<{ id: Id; fields: S }>>(record),
})
