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

/** Why a row of evidence is told apart from the bands: a key of words. */
export type ApartWhy =
  | 'no-post'
  | 'durable-wood'
  | 'less-preservative'
  | 'no-count'
  | 'one-side'
  | 'zone-not-read'
  | 'milder-zone'
  | 'not-chosen'
  | 'no-life'

/** Share still sound by year, from 0 on, as a band. */
export type SoundByYear = readonly Readonly<{ year: number; share: Band }>[]

/** What the rows of one treatment or wood, in one decay zone and contact, leave open: up to the last year that they speak of. */
export type TreatmentBand = Readonly<{
  wood: string
  zone: number | null
  contact: 'in-ground' | 'above-ground' | 'laboratory' | null
  rows: readonly string[]
  /** Does it bound one side alone, as rows of a harsher zone do? */
  isOneSided: boolean
  sound: SoundByYear
}>

/** What may be said of the post's life, always as a range. */
export type LifeResult = Readonly<{
  /** Rows of evidence that the bands rest on, by id; empty for the user's own. */
  rows: readonly string[]
  /** Rows of such wood that are no part of a band, each with the reason. */
  apart: readonly Readonly<{ row: string; why: ApartWhy }>[]
  /** What the evidence lacks for this post: keys of words. */
  lacks: readonly string[]
  bands: readonly TreatmentBand[]
  /** Range of life of one row that was chosen, or the user's own, factors in it; null for all rows, which tell shares and no life. `high` null: or more. */
  estimated: Readonly<{ low: Seconds; high: Seconds | null }> | null
  /** What of termites was seen beside the decay where the rows stood: keys of words. */
  termites: readonly string[]
  factors: Readonly<Record<string, number>>
  /** All bands as one, as long as every one of them speaks; null without any. An illustration of spread, not a forecast. */
  sound: SoundByYear | null
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
