import type { SplashBand } from '../engineering/moisture/splashBand.ts'
import type { WaterPath } from '../engineering/moisture/waterPath.ts'
import type { SoilWetness, SoilWetnessAt } from '../engineering/moisture/soilWetness.ts'
import type { Oxygen, WoodTouch, WoodWetness } from '../engineering/tables/contactWetness.ts'
import type { SourceId } from '../engineering/sources.ts'
import type { CubicMetres, Metres, SquareMetres } from '../units/quantity.ts'
import type { Standing, Worked } from './worked.ts'

export type PostSide = 'uphill' | 'axis' | 'downhill'

/** A stretch of the post's face on one side on which one thing touches the wood and one class holds. Elevations signed [m]. */
export type WetStretch = Readonly<{
  side: PostSide
  from: Metres
  to: Metres
  touch: WoodTouch
  /** Of the ground at that depth, and why. */
  ground: SoilWetness
  groundReason: SoilWetnessAt['reason']
  wetness: WoodWetness
  oxygen: Oxygen
  /** Water and air together: what decay needs besides warmth. Never said to be decay. */
  waterAndAir: boolean
  /** Key into the text table. */
  reason: string
  sources: readonly SourceId[]
  standing: Standing
}>

/** The joint that opens between wood and concrete as the wood dries; null where no concrete touches the wood's sides. */
export type JointResult = Readonly<{
  /** Level of its top on each side, and of the depth where it closes [m]. */
  top: Readonly<Record<PostSide, Metres>>
  reach: Metres
  /** At one face, across the width and across the depth of the post; zero where the wood did not dry. Along the rings and across them: both directions of shrinkage. */
  gaps: readonly Worked[]
  /** Widest gap at one face [m]. */
  widest: Metres
  /** What it holds when full. */
  volume: Worked | null
  conductivity: Worked | null
  /** Times better than sound concrete, and than the soil. */
  against: readonly Worked[]
  capillaryHold: Worked | null
  standing: Standing
}>

/** Water in a dished top when it is full. The bed turns about the axis. */
export type Pond = Readonly<{ level: Metres; bed: readonly (readonly [r: number, y: number])[] }>

/** Does the top shed water? */
export type TopResult = Readonly<{
  /** Null where the pier has no finished top: then soil lies against the wood. */
  slope: Worked | null
  path: WaterPath
  /**
   * Points (r, y) [m] of the way that rain runs in the upright plane through the axis and straight downhill: r is negative uphill,
   * positive downhill. In order of flow; the last one is where it ends: on the ground downhill, in the swale, or at the post's face.
   */
  line: readonly (readonly [r: number, y: number])[]
  /** Held by a dished top when full; zero for any other. */
  ponded: Worked | null
  pondedVolume: CubicMetres
  /** That water: its level, and its bed from the rim to the axis as points (r, y) [m]; null where none stands. */
  pond: Pond | null
  /** Height of the rim above uphill and downhill grade. */
  rimAboveUphill: Worked | null
  rimAboveDownhill: Worked | null
  /** Fall of the ground away from the pier uphill, against IRC R401.3. */
  fall: Readonly<{ worked: Worked; asked: Worked; reached: boolean }>
  swale: boolean
  /** Water of the strip uphill in the steady rain entered, and whether the ground takes that rain. */
  runoff: Worked | null
  ponding: Worked | null
  splash: SplashBand
  heaped: Metres
}>

/** Where decay of posts is found: the top of the soil, or of the concrete, against the wood. */
export type GroundlineZone = Readonly<{
  at: 'grade' | 'top-of-concrete' | 'none'
  /** Per side, elevations [m]. */
  bands: Readonly<Record<PostSide, Readonly<{ from: Metres; to: Metres }>>>
  sources: readonly SourceId[]
  standing: Standing
}>

export type WetShare = Readonly<{ wetness: WoodWetness; length: Readonly<Record<PostSide, Metres>>; area: SquareMetres; share: number }>

/** Water against the wood of one pier. */
export type MoistureResult = Readonly<{
  /** Top down on each side, from the splash band above ground to the foot. */
  profile: readonly WetStretch[]
  /** Of the wood below grade and inside concrete, by class; areas sum to the whole. Empty where no wood is buried. */
  shares: readonly WetShare[]
  /** The same wood below grade, its end with it, and what of it stands in concrete or mix above grade [m2]. */
  wood: Readonly<{ below: SquareMetres; above: SquareMetres }>
  /** Longest stretch with water and air together on any side [m]. */
  wetAndAiry: Metres
  joint: JointResult | null
  top: TopResult
  groundline: GroundlineZone
  /** Top of the ground that water rises into; null without a water table. */
  fringe: Readonly<{ low: Worked | null; high: Worked | null }> | null
  /** Everything above with a number, for the command line and the pad. */
  worked: readonly Worked[]
  sources: readonly SourceId[]
}>
