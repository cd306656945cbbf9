import type { Contact } from '../../model/kind.ts'
import type { Standing } from '../../model/worked.ts'
import type { SoilWetness } from '../moisture/soilWetness.ts'
import type { SourceId } from '../sources.ts'

/** How wet wood stays where something touches it: three classes in order, driest first. Reasoned; no moisture content is claimed. */
export const woodWetnesses = ['dries-out', 'wet-at-times', 'stays-wet'] as const
export type WoodWetness = (typeof woodWetnesses)[number]
/** How much air decay finds there. */
export type Oxygen = 'plenty' | 'some' | 'little'

/**
 * What touches the wood: a filling or the ground; or a place whose own rule comes before that of what fills it. 'joint':
 * the open joint at the top of concrete. 'splash-band': above ground within reach of splashes. 'groundline': the top of
 * the soil, or of the concrete, against the wood. 'dish': in the water that a dished top holds. 'below-water': under the water table.
 */
export type WoodTouch = Contact | 'joint' | 'splash-band' | 'groundline' | 'dish' | 'below-water'

export type ContactWetness = Readonly<{
  /** Class by wetness of the ground. */
  wetness: Readonly<Record<SoilWetness, WoodWetness>>
  /** Class where the top of the pier sends water to the post; left out where the top does not matter. */
  fed?: WoodWetness
  oxygen: Oxygen
  /** Why, a key into the text table. */
  reason: string
  sources: readonly SourceId[]
  standing: Standing
}>
const row = (
  classes: readonly [WoodWetness, WoodWetness, WoodWetness],
  oxygen: Oxygen,
  reason: string,
  sources: readonly SourceId[] = [],
  fed?: WoodWetness,
): ContactWetness => ({
  wetness: { drains: classes[0], damp: classes[1], wet: classes[2] },
  oxygen,
  reason,
  sources: [...sources, 'assumption'],
  standing: 'assumed here',
  ...(fed === undefined ? {} : { fed }),
})

const dry = 'dries-out'
const times = 'wet-at-times'
const wet = 'stays-wet'
/** The contact table: class in ground that drains, stays damp, stays wet. Every class is reasoned here; the sources bear on the reason alone. Source: assumption. */
export const contactWetness: Readonly<Record<WoodTouch, ContactWetness>> = {
  air: row([dry, dry, dry], 'plenty', 'air-lets-wood-dry'),
  gravel: row([times, times, wet], 'some', 'gravel-drains-only-where-the-ground-does', ['extension-answer-2018']),
  granular: row([times, times, wet], 'some', 'gravel-drains-only-where-the-ground-does', ['extension-answer-2018']),
  concrete: row([times, times, wet], 'little', 'sound-concrete-passes-little-water', ['concrete-conductivity', 'nicholas-2019']),
  joint: row([times, times, wet], 'plenty', 'open-joint-leads-water-down', ['parallel-plates', 'extension-answer-2018'], wet),
  'dry-mix': row([times, wet, wet], 'some', 'dry-mix-may-be-porous', ['bohnhoff-2003']),
  'flowable-fill': row([times, wet, wet], 'some', 'flowable-fill-is-porous'),
  backfill: row([times, wet, wet], 'some', 'soil-holds-water-against-wood'),
  'native-soil': row([times, wet, wet], 'some', 'soil-holds-water-against-wood'),
  groundline: row([times, wet, wet], 'plenty', 'water-air-and-soil-life-meet', ['osu-release-1997'], wet),
  'splash-band': row([times, times, times], 'plenty', 'splashes-wet-what-dries-between', ['fpl-splashing-rain', 'timber-splash-guide']),
  dish: row([wet, wet, wet], 'plenty', 'dish-holds-water-against-wood'),
  'below-water': row([wet, wet, wet], 'little', 'under-water-there-is-no-air', ['osu-release-1997']),
}
