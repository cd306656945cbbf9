import type { CautionId, CheckId, LoadNote } from './saidIds.ts'
import type { CubicMetres, Metres, Newtons, SquareMetres } from '../units/quantity.ts'
import type { SourceId } from '../engineering/sources.ts'
import type { CalloutResult } from './calloutResult.ts'
import type { Issue } from './issue.ts'
import type { Contact } from './kind.ts'
import type { Measure, Role } from './solid.ts'
import type { PierSpec } from './spec.ts'
import type { Check, Standing, Worked } from './worked.ts'
import type { Sheet, Zone } from './zone.ts'

/** One way to order a material, for one pier and for the job; `each` and `job` in bags or in m3, `extra` the share in them beyond what is placed [1]. */
export type Order =
  | Readonly<{ as: 'bags'; bagSize: number; each: number; job: number; extra: number }>
  | Readonly<{ as: 'ready-mix' | 'loose'; each: CubicMetres; job: CubicMetres; extra: number }>

/** What one zone or set of parts takes: volume, weight, how to order it. */
export type QuantityLine = Readonly<{
  id: string
  /** Zone or part ids it comes from. */
  zones: readonly string[]
  role: Role
  /** Net of post, bars and bracket parts, one pier. */
  volume: Measure<CubicMetres>
  /** The share of `volume` below grade [m3]; the rest stands above it. */
  inHole: CubicMetres
  /** Dry weight, and weight with its part below the water table buoyant. */
  weight: Newtons
  buoyantWeight: Newtons
  /** Ways to order it; empty when it is not bought. Waste included, bags rounded up. */
  orders: readonly Order[]
  sources: readonly SourceId[]
  standing: Standing
}>

/** Wood below grade on one line down the post's face. */
export type ExposureLine = Readonly<{
  side: 'uphill' | 'axis' | 'downhill'
  /** Wood below grade, total [m]. */
  belowGrade: Metres
  by: Readonly<Partial<Record<Contact, Metres>>>
  /** Wood inside concrete but above grade, listed apart [m]. */
  inConcreteAboveGrade: Metres
}>

export type Exposure = Readonly<{
  lines: readonly ExposureLine[]
  /** Side and foot area of wood below grade by what touches it [m2]. */
  area: Readonly<Partial<Record<Contact, SquareMetres>>>
  areaBelowGrade: SquareMetres
  standOff: Readonly<{ aboveConcrete: Metres; aboveGrade: Metres; checks: readonly Check[] }> | null
}>

/** Depths that rules use; each says where it was measured. */
export type Depths = Readonly<{
  /** Underside of what bears (concrete, pad, dry mix or the post's own foot) below grade [m]. */
  bearingAtAxis: Metres
  bearingAtDownhillEdge: Metres
  bearingAtUphillEdge: Metres
}>

/** What a combination of loads comes to [N]; `combination` is a key into the text table ("loads"). */
export type CombinedLoad = Readonly<{ combination: string; load: Newtons }>

/**
 * One way in which wind may act on the roof over a post, seen at one of the two posts of a frame, and what comes of it there.
 * Words of every part are in the text table ("loads").
 */
export type LoadCase = Readonly<{
  id: string
  wind: 'across' | 'on-high-eave' | 'on-low-eave' | 'along'
  /** The case of a free roof's figure, or the lesser or greater of an enclosed roof's two windward values. */
  figure: 'A' | 'B' | 'least' | 'most'
  /** Air inside an enclosed building pushes the roof out, or draws it in; null for a free roof. */
  inside: 'out' | 'in' | null
  post: 'windward' | 'leeward'
  /** Wind at the post at strength level, up positive [N]: its own half of the roof, and by statics of the frame. */
  byArea: Newtons
  byStatics: Newtons
  /** Allowable-stress level. Uplift up positive, negative where dead load wins; gravity down positive. */
  uplift: CombinedLoad
  gravity: CombinedLoad
  worked: readonly Worked[]
}>

/** Which combination set a load, and in which wind; `case` null where no wind is in it. */
export type GoverningLoad = Readonly<{ case: string | null; combination: string }>

/** Allowable-stress loads at the top of one pier; null each where nothing is known of it. Earthquake is never in them. */
export type Demand = Readonly<{
  kind: 'entered' | 'estimated' | null
  isEstimate: boolean
  uplift: Worked | null
  gravity: Worked | null
  lateral: Worked | null
  /** Height of the lateral load above grade at the axis [m]. */
  lateralHeight: Metres | null
  /** Every wind case tried, at each post. Empty unless estimated. */
  cases: readonly LoadCase[]
  governing: Readonly<{ uplift: GoverningLoad | null; gravity: GoverningLoad | null }>
  /** Steps that all cases share. */
  worked: readonly Worked[]
  /** What an estimate leaves out, or why it gives no value: keys into the text table ("loads"). */
  notes: readonly LoadNote[]
}>

export type PierResult = Readonly<{
  spec: PierSpec
  zones: readonly Zone[]
  sheets: readonly Sheet[]
  depths: Depths
  /** Hole below grade [m3] and what is left empty in it. */
  hole: Readonly<{
    volume: Measure<CubicMetres>
    void: CubicMetres
    spoilBank: CubicMetres
    spoilLoose: Readonly<{ low: CubicMetres; high: CubicMetres }>
  }>
  quantities: readonly QuantityLine[]
  /** Loads from the drawing, else an estimate. */
  demand: Demand
  /** Every mechanism and link, counted or not. */
  checks: readonly Check[]
  /** The soil mechanism in use and the connection, and which of all counted links governs. Null when a needed link is not counted. */
  uplift: Readonly<{
    soil: CheckId | ''
    governing: CheckId | null
    allowable: Newtons | null
    /** Uplift over the allowable; null without either. */
    ratio: number | null
    standing: Standing
    uncounted: readonly CheckId[]
  }>
  exposure: Exposure
  /** The pier against the drawing; null while none is entered. */
  callout: CalloutResult | null
  /** Headline numbers in order of display. */
  headlines: readonly Worked[]
  issues: readonly Issue[]
  /** Keys of cautions to show. */
  cautions: readonly CautionId[]
  sources: readonly SourceId[]
}>
