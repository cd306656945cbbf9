import type { Metres, MetresPerSecond, Newtons, Pascals, PressureGradient, Radians, Slope, UnitWeight } from '../units/quantity.ts'
import type { Costs, Life, Placing, Water } from './timeSpec.ts'

export type { ClimateMonths, Costs, Life, MonthKey, Placing, Water } from './timeSpec.ts'

/**
 * One pier as a person sets it: coherent SI, frozen, validated. Nothing derived lives here.
 * Frame: y up, origin on the pier's axis at finished grade, x across the post's `width`, z across its `depth`.
 * Depths are non-negative, measured down the axis from grade at the axis.
 */
export type PierSpec = Readonly<{
  site: Site
  hole: Hole
  post: Post
  support: Support
  fill: Fill
  /** Bars through the post; null when none. Only with an embedded post. */
  bars: ThroughBars | null
  verticalBars: VerticalBars | null
  top: Top
  concrete: Concrete
  placing: Placing
  water: Water
  /** Number of like piers on the job [count]. */
  piers: number
  loads: Loads
  sideways: Sideways
  /** Centre to centre to the nearest pier like this; null when it stands alone. */
  spacing: Metres | null
  /** Code whose clearances for untreated wood are shown. */
  code: CodeEdition
  /** A soil mechanism chosen over the least one, with the reason typed; null for the least that may be counted. */
  judgement: Readonly<{ mechanism: SoilMechanism; reason: string }> | null
  /** What the permit drawing asks of this pier; null while none is entered. */
  callout: Callout | null
  life: Life
  /** Prices as the user knows them; null while none are entered. */
  costs: Costs | null
}>

export type PresumptiveClass = 'crystalline-rock' | 'foliated-rock' | 'gravel' | 'sand' | 'clay'
export type Soil =
  | Readonly<{ kind: 'presumptive'; class: PresumptiveClass }>
  | Readonly<{
      kind: 'user'
      /** Moist unit weight. */
      unitWeight: UnitWeight
      frictionAngle: Radians
      /** Undrained shear strength for clay; 0 for sand. */
      cohesion: Pascals
      allowableBearing: Pascals
      /** Allowable lateral bearing per depth. */
      lateral: PressureGradient
      /** Allowable side friction the user answers for; 0 when none. */
      sideFriction: Pascals
    }>

export type Site = Readonly<{
  soil: Soil
  /** A second native layer below `from` (measured straight down from grade, parallel to it); null for one layer. */
  lower: Readonly<{ from: Metres; soil: Soil }> | null
  /** Thickness of topsoil, 0 for none. Carries no load in any check. */
  topsoil: Metres
  slope: Slope
  /** Plan angle that points downhill, from +x toward +z (clockwise seen from above). */
  downhill: Radians
  /** Depth of a level water table below grade at the axis; null for none met. */
  waterTable: Metres | null
  frostDepth: Metres
  /** Blow count N60 of a boring over the shaft; null when none was made. */
  blows: number | null
  /** Height from the pier's grade down to the toe of the slope; null when not known or level. */
  slopeHeight: Metres | null
  weathering: Weathering
}>

/** Loose soil is nothing to build: it is what was left in the hole. */
export type BaseMaterial = 'gravel' | 'concrete' | 'loose-soil'
export type Hole = Readonly<{
  diameter: Metres
  depth: Metres
  /** Straight-sided widening at the bottom; null for none. */
  bell: Readonly<{ diameter: Metres; height: Metres }> | null
  /** Mouth wider than the shaft: `diameter` at grade on the axis, narrowing to the shaft over `depth`. */
  flare: Readonly<{ diameter: Metres; depth: Metres }> | null
  base: Readonly<{ material: BaseMaterial; thickness: Metres }> | null
}>

export type PostSectionId =
  | '4x4'
  | '4x6'
  | '6x6'
  | '6x8'
  | '8x8'
  | '3-ply-2x6'
  | '4-ply-2x6'
  | '3-ply-2x8'
  | 'round-6'
  | 'round-7'
  | 'round-8'
  | 'round-9'
  | 'round-10'
export type SpeciesId = 'southern-pine' | 'douglas-fir-larch' | 'hem-fir' | 'spruce-pine-fir' | 'cedar'
export type UseClass = 'untreated' | 'UC3B' | 'UC4A' | 'UC4B' | 'UC4C'
export type Post = Readonly<{
  section: PostSectionId
  species: SpeciesId
  treatment: UseClass
  /** Above grade at the axis, while it stands plumb. */
  heightAboveGrade: Metres
  /** Off plumb, with its top toward the downhill side; for a post that stands in the hole. */
  lean: Radians
}>

/** Where the post stands. `foot` is measured up from the hole's cleaned bottom. */
export type Support = Readonly<{ kind: 'embedded'; foot: Metres }> | Readonly<{ kind: 'bracket'; bracket: Bracket; standOff: Metres }>

export type BracketId = 'bar-legs' | 'side-plates' | 'knife-plate' | 'base-plate'
export type Bracket = Readonly<{
  kind: BracketId
  plateThickness: Metres
  boltDiameter: Metres
  boltCount: number
  /** Steel below the top of the concrete. */
  embedment: Metres
  /** Allowable uplift from the bracket's own evaluation report, as the user enters it; null when there is none. */
  rating: Newtons | null
}>

export type BagSize = 50 | 60 | 80
export type Fill =
  | Readonly<{ kind: 'dry-bag-at-foot'; bags: number; bagSize: BagSize }>
  | Readonly<{ kind: 'dry-full-height' }>
  | Readonly<{ kind: 'mixed-full-height' }>
  | Readonly<{ kind: 'mixed-collar'; height: Metres }>
  | Readonly<{ kind: 'mixed-bracket-pier' }>
  | Readonly<{ kind: 'granular-on-pad'; pad: Metres }>
  | Readonly<{ kind: 'flowable-fill' }>
export type FillId = Fill['kind']

export type BarSize = '#3' | '#4' | '#5' | '#6' | '#7' | '#8'
export type BarGrade = 'unknown' | '40' | '60'
export type BarCoating = 'plain' | 'galvanised' | 'epoxy' | 'stainless'
export type ThroughBars = Readonly<{
  size: BarSize
  count: number
  /** Centre of the lowest bar above the post's foot. */
  aboveFoot: Metres
  /** Centre to centre, up the post; matters from two bars on. */
  spacing: Metres
  length: Metres
  grade: BarGrade
  coating: BarCoating
}>
export type VerticalBars = Readonly<{ size: BarSize; count: number; cover: Metres; grade: BarGrade; coating: BarCoating }>

export type TopShape = 'flat' | 'crowned' | 'dished'
export type Top = Readonly<{
  shape: TopShape
  /** Crown's rise, or dish's depth, at the middle of the post's widest face (at the bracket's landing for a bracket). */
  rise: Metres
  /** Height of the level rim above grade at the uphill edge of the hole; negative when it ends below. */
  rim: Metres
  /** Soil or mulch heaped over the finished top, measured at the post. 0 for none. */
  heaped: Metres
}>

export type Concrete = Readonly<{
  /** Specified strength at 28 days. */
  strength: Pascals
  unitWeight: 'plain' | 'reinforced'
  bagSize: BagSize
  /** Extra to order, share of the net volume. */
  waste: number
  /** Strengths of three cores taken from the mix as placed, corrected for their shape; null when none were taken. */
  cores: Readonly<{ first: Pascals; second: Pascals; third: Pascals }> | null
}>

export type Weathering = 'negligible' | 'moderate' | 'severe'
export type CodeEdition = 'irc-2012-2018' | 'irc-2021' | 'ibc-2012' | 'ibc-2018'

/** What pulls, presses and pushes. Loads from the drawing go before an estimate; with neither, nothing is held against the resistances. */
export type Loads = Readonly<{ entered: EnteredLoads | null; estimate: LoadEstimate | null }>
/** Allowable-stress loads at the top of the pier, from the drawing. */
export type EnteredLoads = Readonly<{
  uplift: Newtons
  gravity: Newtons
  lateral: Newtons
  /** Height of the lateral load above grade. */
  lateralHeight: Metres
}>
export type RoofShape = 'free-monoslope' | 'free-pitched' | 'free-troughed' | 'enclosed' | 'partially-enclosed'
/** What the loads at one post are estimated from. Wind and snow by the edition chosen; always shown as an estimate. */
export type LoadEstimate = Readonly<{
  edition: '7-16' | '7-22'
  /** Basic wind speed V, strength level. */
  speed: MetresPerSecond
  exposure: 'B' | 'C' | 'D'
  /** Of the site above sea level. */
  elevation: Metres
  topographic: number
  roof: RoofShape
  flow: 'clear' | 'obstructed'
  roofAngle: Radians
  /** Mean roof height; eave height for an enclosed roof of 10 degrees or less. */
  roofHeight: Metres
  /** Between the two post lines, and between posts along a line. */
  span: Metres
  bay: Metres
  overhang: Metres
  deadLoad: Pascals
  roofLive: Pascals
  groundSnow: Pascals
}>

/** How the ground is counted sideways. */
export type Sideways = Readonly<{
  /** Twice the tabulated value, for an isolated pole that may move half an inch at grade under a short load. */
  ground: 'as-tabulated' | 'doubled'
  top: 'free' | 'held-at-grade'
}>

export type SoilMechanism =
  | 'friction-and-weight'
  | 'rational-friction-and-weight'
  | 'depth-friction-and-weight'
  | 'clay-adhesion-and-weight'
  | 'user-friction-and-weight'
  | 'cone-over-ledge'
  | 'breakout-of-ledge'

export type YesNo = 'yes' | 'no'
/** What a permit drawing says of one pier. Null: the drawing, as entered, does not say. */
export type Callout = Readonly<{
  diameter: Metres | null
  /** Of the bearing surface below grade on the downhill side. */
  depth: Metres | null
  /** Of the concrete at 28 days. */
  strength: Pascals | null
  /** Must it be mixed before it is placed? */
  mixed: YesNo | null
  /** Must concrete reach from the bottom of the fill up to grade? */
  encasement: YesNo | null
  /** Must a bar go through the post? */
  barThrough: YesNo | null
  barSize: BarSize | null
  section: PostSectionId | null
  treatment: UseClass | null
  /** May the post stand on a bracket? */
  bracket: YesNo | null
  /** Design uplift of one post, allowable stress. */
  uplift: Newtons | null
  frostDepth: Metres | null
  soil: PresumptiveClass | null
  /** How far the pier may fall short of the drawing and still meet it. */
  tolerance: Readonly<{ diameter: Metres; depth: Metres }>
  /** Words that stay in the file: never in a link. */
  number: string
  date: string
  notes: string
}>

/** What is saved and linked: the pier, how each value was typed, and the words that stay on this machine. */
export type PierDocument = Readonly<{
  spec: PierSpec
  /** Path into the spec ("hole.depth") to the text a person typed, kept only while it still reads as the value. */
  written: Readonly<Record<string, string>>
  name: string
  note: string
}>
