import type { bagSizes } from '../engineering/tables/bags.ts'
import type { pierFields, soilMechanisms } from '../spec/pier/pier.ts'
import type { postSectionIds, speciesIds, useClassIds } from '../spec/pier/post.ts'
import type { presumptiveClasses } from '../spec/pier/site.ts'
import type { barCoatings, barGradeIds, barSizes } from '../spec/pier/steel.ts'

/**
 * One pier as a person sets it: coherent SI, frozen, validated. Nothing derived lives here. Each type is read off the one declaration of the
 * fields in spec/pier, where each field is explained.
 * Frame: y up, origin on the pier's axis at finished grade, x across the post's `width`, z across its `depth`.
 * Depths are non-negative, measured down the axis from grade at the axis.
 */
export type PierSpec = (typeof pierFields)['start']

export type Site = PierSpec['site']
export type Soil = Site['soil']
export type PresumptiveClass = (typeof presumptiveClasses)[number]
export type Weathering = Site['weathering']
export type Hole = PierSpec['hole']
export type BaseMaterial = NonNullable<Hole['base']>['material']
export type Post = PierSpec['post']
export type PostSectionId = (typeof postSectionIds)[number]
export type SpeciesId = (typeof speciesIds)[number]
export type UseClass = (typeof useClassIds)[number]
/** Where the post stands. */
export type Support = PierSpec['support']
export type Bracket = Extract<Support, { kind: 'bracket' }>['bracket']
export type BracketId = Bracket['kind']
export type Fill = PierSpec['fill']
export type FillId = Fill['kind']
export type BagSize = (typeof bagSizes)[number]
export type ThroughBars = NonNullable<PierSpec['bars']>
export type VerticalBars = NonNullable<PierSpec['verticalBars']>
export type BarSize = (typeof barSizes)[number]
export type BarGrade = (typeof barGradeIds)[number]
export type BarCoating = (typeof barCoatings)[number]
export type Top = PierSpec['top']
export type Concrete = PierSpec['concrete']
export type CodeEdition = PierSpec['code']
export type EnteredLoads = NonNullable<PierSpec['loads']['entered']>
export type LoadEstimate = NonNullable<PierSpec['loads']['estimate']>
export type Sideways = PierSpec['sideways']
export type SoilMechanism = (typeof soilMechanisms)[number]
export type Callout = NonNullable<PierSpec['callout']>
export type YesNo = PierSpec['placing']['air']
export type Placing = PierSpec['placing']
export type Water = PierSpec['water']
export type Life = PierSpec['life']
export type ClimateMonths = NonNullable<Life['months']>
export type MonthKey = keyof ClimateMonths['temperature']
export type Costs = NonNullable<PierSpec['costs']>

/** Where a value came from: a person gave it, the permit drawing says it, the tool put it there, or nobody knows. */
export type Origin = 'typed' | 'drawing' | 'assumed' | 'not-known'

/** What of a pier follows from its fill, its support or its bracket. */
export type KindParts = Pick<PierSpec, 'support' | 'fill' | 'bars' | 'verticalBars' | 'top'>
/** What a kind had of a pier when another took its place: its own values, and what the change took or moved. */
export type OtherKind = Readonly<{ of: 'fill' | 'support' | 'bracket'; pier: Readonly<Partial<KindParts>> }> &
  Pick<PierDocument, 'written' | 'origins'>

/** What is saved and linked: the pier, how each value was typed and where it came from, and the words that stay on this machine. */
export type PierDocument = Readonly<{
  spec: PierSpec
  /** Path into the spec ("hole.depth") to the text a person typed, kept only while it still reads as the value. */
  written: Readonly<Record<string, string>>
  /**
   * Path of an input to where its value came from, where the value alone does not tell: without an entry, a value as the first pier has it is
   * assumed, and any other was given. In the file, never in a link.
   */
  origins: Readonly<Record<string, Origin>>
  /** Values of kinds that are not in use now; choosing one again brings them back. In the file, never in a link. */
  otherKinds: readonly OtherKind[]
  name: string
  note: string
}>
