import type { Trial } from '../engineering/tables/dryMixTrial.ts'
import type { WeatherFlag } from '../engineering/mix/weatherFlags.ts'
import type { SourceId } from '../engineering/sources.ts'
import type { CubicMetres, Metres, Newtons, Seconds } from '../units/quantity.ts'
import type { MoistureResult } from './moistureResult.ts'
import type { Standing, Worked } from './worked.ts'

export type Band<T extends number = number> = Readonly<{ low: T; high: T }>

/**
 * Mix placed dry, from the hole to the order: what lies in the hole, the extra to order, and what is left of the last bag, which
 * together are what is ordered.
 */
export type BagMass = Readonly<{
  bagSize: 40 | 50 | 60 | 80
  bag: Newtons
  placed: Newtons
  extra: Newtons
  left: Newtons
  ordered: Newtons
  /** Whole bags for one pier, and for the job, which shares its last bag. */
  each: number
  job: number
}>

/** A mix placed dry. Everything of it is a range; the scatter is a picture and no number comes out of it. */
export type DryMix = Readonly<{
  as: 'dry'
  /** Is it watered from the top by the crew, or left to the ground? */
  wetted: 'from-the-top' | 'by-the-ground'
  /** Water for one pier: bound and gel water, label mixing water, to fill every void; and what is poured. */
  needs: readonly Worked[]
  /** From the hole to the order, one pier. */
  mass: BagMass
  poured: CubicMetres
  /** Height of the mix [m] and its top and bottom elevation on the axis. */
  height: Metres
  from: Metres
  to: Metres
  /** Depth wetted below its top, shortest and longest; null without water poured. */
  wetting: Readonly<{ shortest: Worked; longest: Worked; reachesFoot: 'yes' | 'no' | 'can not be told' }> | null
  /** Water over cement down the mix, top first. `ratio` and `strength` (over mixed concrete, gel-space, void form) as ranges; strength null where no water gets. */
  layers: readonly Readonly<{ from: Metres; to: Metres; ratio: Band; strength: Band | null }>[]
  trial: Trial
  worked: readonly Worked[]
}>

/** A mix placed wet. */
export type MixedConcrete = Readonly<{
  as: 'mixed'
  /** Share of 28-day strength by age, as a band (real temperature by two maturity rules). Ages 0 to 28 days. */
  gain: readonly Readonly<{ age: Seconds; share: Band }>[]
  /** Day on which the share asked for is reached; null where the curve never gets there or the cold stops it. */
  loadDay: Band<Seconds> | null
  share: number
  /** Water over cement as delivered and with what was added, and the strength left over that as delivered. */
  added: readonly Worked[]
  air: Readonly<{ asked: boolean; worked: readonly Worked[] }>
  worked: readonly Worked[]
}>

export type MixResult = Readonly<{
  concrete: DryMix | MixedConcrete | null
  weather: readonly WeatherFlag[]
  worked: readonly Worked[]
  sources: readonly SourceId[]
  standing: Standing
}>

/** What may be said of the post's life, always as a range. */
export type LifeResult = Readonly<{
  /** Rows of evidence that the range rests on, by id; empty for the user's own. */
  rows: readonly string[]
  /** Rows that speak of such wood but give no life (none failed, findings): shown beside. */
  beside: readonly string[]
  /** Does the evidence cover this post (buried, treated as today)? A key into the text table says what it lacks. */
  lacks: readonly string[]
  reference: Band<Seconds> | null
  estimated: Band<Seconds> | null
  factors: Readonly<Record<string, number>>
  /** Share still sound by year, 0 to 60, as a band; null without a range. An illustration of spread, not a forecast. */
  sound: readonly Readonly<{ year: number; share: Band }>[] | null
  /** The trade's figure, shown beside the rows that disagree. */
  ruleOfThumb: Readonly<{ row: string; applies: boolean; life: Seconds }>
  /** For wood above ground alone; null without a climate. */
  climate: Readonly<{ index: Worked; hazard: 'low' | 'moderate' | 'high'; appliesTo: 'above-ground wood' }> | null
  buriedHazard: 'high' | 'none'
  inspection: Readonly<{ visible: readonly string[]; hidden: readonly string[]; first: Band<Seconds> | null; every: Seconds | null }>
  claims: readonly string[]
  worked: readonly Worked[]
  sources: readonly SourceId[]
  standing: Standing
}>

export type CostResult = Readonly<{
  /** Null where a price is missing; `lacks` names its field. */
  present: Band | null
  yearly: Band | null
  lacks: readonly string[]
  /** Replacements counted within the horizon for the longest and the shortest life. */
  replacements: Band | null
  worked: readonly Worked[]
  sources: readonly SourceId[]
  standing: Standing
}>

/** Water, mix, years and cost of one pier: worked out when asked for, besides what `derivePier` gives at once. */
export type TimeResult = Readonly<{ moisture: MoistureResult; mix: MixResult; life: LifeResult; cost: CostResult | null }>
