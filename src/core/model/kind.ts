import type { Metres, UnitWeight } from '../units/quantity.ts'
import type { SourceId } from '../engineering/sources.ts'
import type { LiftEnd } from '../geometry/fillStack.ts'
import type { ConvexSolid } from '../geometry/placed.ts'
import type { ReasonId, ZoneLabel } from './saidIds.ts'
import type { Role } from './solid.ts'
import type { BarGrade, BarSize } from './spec.ts'

/** One lift of placed material, from the top of the lift below it up to `to`. `label` is a key into the text table. */
export type Lift = Readonly<{ id: string; role: Role; label: ZoneLabel; to: LiftEnd }>

/** What a kind may ask of the hole while it stacks its lifts. */
export type FillSite = Readonly<{
  /** Bottom of the fill: the hole's bottom, or the top of a gravel or concrete base [m], signed. */
  bottom: Metres
  /** Where the lift ends that finishes the pier, if the kind has a finished top; else grade. */
  end: LiftEnd
  /** Mix placed dry, as it lies [N/m3]. */
  looseWeight: UnitWeight
  /** Level at which `volume` [m3] placed from `bottom` round the post ends [m], signed. */
  levelFor(volume: number): Metres
}>

/** Whether a standard lets this kind's part be counted, and if not, why (a key into the text table). */
export type Counting = Readonly<{
  counted: 'counted' | "engineer's judgement" | 'not counted'
  why: ReasonId
  sources: readonly SourceId[]
}>

/** What of one way to fill a hole a standard lets one count, thing by thing. */
export type FillCounting = Readonly<{
  /** Does the weight of what is placed count against uplift? */
  weight: Counting
  /** Side friction between what is placed and undisturbed ground. */
  sideFriction: Counting
  /** Bar through the post, or the bracket, as the connection. */
  connection: Counting
  strength: Counting
  /** What stands round the post as a fill that presses sideways on undisturbed ground, IBC 1807.3.3. */
  sideways: Counting
}>

/** What a lift is ordered as, and how heavy it is. */
export type Supply = 'bags' | 'ready-mix' | 'loose' | 'none'

/** What stands against the wood, for the exposure table. */
export type Contact = 'native-soil' | 'backfill' | 'dry-mix' | 'concrete' | 'granular' | 'gravel' | 'flowable-fill' | 'air'

/** The frame a bracket is drawn in: concrete's finished landing and the post that stands on it. */
export type BracketSite = Readonly<{
  /** Top of the concrete under the bracket [m], signed. */
  landing: Metres
  standOff: Metres
  postWidth: Metres
  postDepth: Metres
}>

export type BracketPart = Readonly<{ id: string; label: ZoneLabel; role: 'steel' | 'bar'; solids: readonly ConvexSolid[] }>

/** What of a bracket is cast in: bars, for which codes say how far they must reach, or flat steel, for which none does. */
export type BracketLegs =
  | Readonly<{ shape: 'flat' }>
  | Readonly<{
      shape: 'bar'
      /** How the bar ends down in the concrete. */
      end: 'straight' | 'hook' | 'head'
      size: BarSize
      grade: BarGrade
      count: number
      /** Between two neighbours, centre to centre [m]. */
      apart(site: BracketSite): Metres
    }>

export type MaterialWeight = Readonly<{ unitWeight: UnitWeight; source: SourceId }>
