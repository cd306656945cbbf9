import type { CubicMetres, Metres, Newtons, SquareMetres } from '../units/quantity.ts'
import type { SourceId } from '../engineering/sources.ts'
import type { CalloutResult } from './calloutResult.ts'
import type { Issue } from './issue.ts'
import type { Contact } from './kind.ts'
import type { Measure, Role } from './solid.ts'
import type { PierSpec } from './spec.ts'
import type { Check, Standing, Worked } from './worked.ts'
import type { Sheet, Zone } from './zone.ts'

/** One way to order a material, for one pier and for the job; `each` and `job` in bags or in m3. */
export type Order =
  | Readonly<{ as: 'bags'; bagSize: number; each: number; job: number }>
  | Readonly<{ as: 'ready-mix' | 'loose'; each: CubicMetres; job: CubicMetres }>

/** What one zone or set of parts takes: volume, weight, how to order it. */
export type QuantityLine = Readonly<{
  id: string
  /** Zone or part ids it comes from. */
  zones: readonly string[]
  role: Role
  /** Net of post, bars and bracket parts, one pier. */
  volume: Measure<CubicMetres>
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
  /** Every mechanism and link, counted or not. */
  checks: readonly Check[]
  /** The soil mechanism in use and the connection, and which of all counted links governs. Null when a needed link is not counted. */
  uplift: Readonly<{ soil: string; governing: string | null; allowable: Newtons | null; standing: Standing; uncounted: readonly string[] }>
  exposure: Exposure
  /** The pier against the drawing; null while none is entered. */
  callout: CalloutResult | null
  /** Headline numbers in order of display. */
  headlines: readonly Worked[]
  issues: readonly Issue[]
  /** Keys of cautions to show. */
  cautions: readonly string[]
  sources: readonly SourceId[]
}>
