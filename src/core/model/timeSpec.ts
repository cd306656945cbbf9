import type { SoilWetness } from '../engineering/moisture/soilWetness.ts'
import type { Texture } from '../engineering/tables/infiltration.ts'
import type { Celsius, CubicMetres, Metres, MetresPerSecond, Seconds, Slope, UnitWeight } from '../units/quantity.ts'
import type { FillId, YesNo } from './spec.ts'

/** How the mix was placed, and what it met. */
export type Placing = Readonly<{
  /** Water poured on a fill that is placed dry, one pier. */
  poured: CubicMetres
  /** Of dry mix as it lies in the hole before it is wetted. */
  looseWeight: UnitWeight
  cement: 'I' | 'III'
  air: YesNo
  /** Added at the site to concrete that came mixed, volume for volume. */
  addedWater: number
  /** Of the concrete over its first weeks. */
  temperature: Celsius
  /** Coldest air expected in its first days. */
  coldestAir: Celsius
  /** Is the ground in the hole frozen? */
  groundFrozen: YesNo
  /** Share of the 28-day strength whose day is asked for. */
  share: number
  /** Which picture of a dry pour is drawn. */
  pattern: number
}>

/** What wets the wood. */
export type Water = Readonly<{
  /** Of the ground above the water table, over the year. */
  ground: SoilWetness
  texture: Texture | null
  /** What lies on the ground beside the post. */
  around: 'ground' | 'gravel'
  /** Fall of finished ground away from the pier on every side; null where grade alone decides. */
  fall: Slope | null
  /** A shallow ditch uphill that leads water round. */
  swale: YesNo
  /** Steady rain to hold the ground against. */
  rain: MetresPerSecond
  /** Of the wood, water by mass of dry wood: when it was set, and what it dries to at the top of the concrete. */
  atSetting: number
  inService: number
  /** Depth to which the joint between wood and concrete opens. */
  jointReach: Metres
}>

/** What a range of life is taken from. */
export type Life = Readonly<{
  /** 'rows': every row of evidence that speaks of such wood; else one row, or the user's own years. */
  reference: 'rows' | 'own' | string
  own: Readonly<{ low: Seconds; high: Seconds }>
  /** Factors A to G but for D, indoor surroundings, which a pier has not. 1 until changed. */
  factors: Readonly<{ quality: number; design: number; work: number; outdoors: number; use: number; upkeep: number }>
  /** May a factor go beyond its customary bounds? */
  wide: YesNo
  /** A packaged record of a climate; null for none. Months entered go before it. */
  climate: string | null
  months: ClimateMonths | null
  /** Zone of decay of poles, 1 low to 5 severe; null where it is not known. */
  decayZone: number | null
}>
export type MonthKey = 'm01' | 'm02' | 'm03' | 'm04' | 'm05' | 'm06' | 'm07' | 'm08' | 'm09' | 'm10' | 'm11' | 'm12'
/** Mean temperature of each month, and its days with 0.25 mm of rain or more. */
export type ClimateMonths = Readonly<{ temperature: Readonly<Record<MonthKey, Celsius>>; rainDays: Readonly<Record<MonthKey, number>> }>

/** In the money that the user thinks in, of one day. */
export type Costs = Readonly<{
  /** Real rate a year. */
  rate: number
  horizon: Seconds
  inspection: number
  /** Time between two inspections. */
  every: Seconds
  /** For one pier built each way: first cost, and its replacement under a standing building. Null where not known. */
  prices: Readonly<Record<FillId, Readonly<{ first: number | null; replacement: number | null }>>>
}>
