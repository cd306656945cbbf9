import type { SoilWetness, SoilWetnessAt } from '../../core/engineering/moisture/soilWetness.ts'
import type { WaterReason } from '../../core/engineering/moisture/waterPath.ts'
import type { Oxygen, WoodTouch, WoodWetness } from '../../core/engineering/tables/contactWetness.ts'
import type { GroundlineZone } from '../../core/model/moistureResult.ts'

/** Words for water against the wood. Classes alone: nobody has measured how wet posts of buildings are in the ground. */
export const moisture = {
  title: 'Water against the wood',
  help: 'Three classes, reasoned from what touches the wood. Nobody has measured how wet such posts get, so no percent is given.',
  loading: 'Working out where water stands',
  wetness: {
    'dries-out': 'Dries out between rains',
    'wet-at-times': 'Wet at times',
    'stays-wet': 'Stays wet',
  } satisfies Record<WoodWetness, string>,
  /** Of wood where rot is found, as years pass. */
  open: 'Sound or lost: can’t be told',
  oxygen: { plenty: 'plenty of air', some: 'some air', little: 'little air' } satisfies Record<Oxygen, string>,
  touches: {
    air: 'Open air',
    'native-soil': 'Undisturbed soil',
    backfill: 'Backfill',
    granular: 'Packed gravel',
    'flowable-fill': 'Flowable fill',
    'dry-mix': 'Dry-placed mix',
    concrete: 'Concrete',
    gravel: 'Gravel bed',
    joint: 'Open joint at the top',
    'splash-band': 'Splash band above ground',
    groundline: 'Where soil and air meet',
    dish: 'Water in the dish',
    'below-water': 'Below the water table',
  } satisfies Record<WoodTouch, string>,
  reasons: {
    'air-lets-wood-dry': 'Air lets wood dry.',
    'gravel-drains-only-where-the-ground-does': 'Gravel drains only where the ground below it drains. In tight clay it fills up.',
    'sound-concrete-passes-little-water': 'Sound concrete lets very little water or air through.',
    'open-joint-leads-water-down': 'Wood shrinks as it dries. The gap that opens leads water down, and lets air in.',
    'dry-mix-may-be-porous': 'Mix that was placed dry may have holes that hold water.',
    'flowable-fill-is-porous': 'Flowable fill has fine holes that hold water.',
    'soil-holds-water-against-wood': 'Soil holds water against the wood.',
    'water-air-and-soil-life-meet': 'Water, air and the life in the soil meet here. Most rot in posts is found in this zone.',
    'splashes-wet-what-dries-between': 'Rain splashes up and wets it. It dries in between.',
    'dish-holds-water-against-wood': 'The top is hollow. Water stands in it, and the wood stands in the water.',
    'under-water-there-is-no-air': 'Under water there is hardly any air. Wood that is always under water hardly rots.',
  } as Readonly<Record<string, string>>,
  ground: {
    drains: 'ground that drains',
    damp: 'ground that stays damp',
    wet: 'ground that stays wet',
  } satisfies Record<SoilWetness, string>,
  groundReasons: {
    'ground-as-entered': 'as you entered it',
    'in-reach-of-capillary-rise': 'water may rise to here from the water table',
    'in-capillary-fringe': 'water rises to here from the water table',
    'below-water-table': 'below the water table',
  } satisfies Record<SoilWetnessAt['reason'], string>,
  sides: { uphill: 'Uphill', axis: 'Middle', downhill: 'Downhill' },
  inGround: (ground: string, why: string): string => `In ${ground}: ${why}.`,
  withAir: (wetness: string, air: string): string => `${wetness}, ${air}`,
  shares: 'Wood in the ground or in concrete, by class',
  sharesOf: (all: string, below: string, above: string): string => `${all} in all: ${below} below grade and ${above} in concrete above it.`,
  together: (length: string): string =>
    `Longest stretch with water and air together: ${length}. That is not rot. It is where rot could start.`,
  groundline: {
    grade: 'Look here first: the top of the soil, and the 6 to 12 in below it. Most rot in posts was found there.',
    'top-of-concrete':
      'Look here first: the top of the concrete. Water and air reach the wood there first. This is our reasoning. No survey of such posts was found.',
    none: 'No wood stands in soil or concrete, so there is no zone in the ground to watch.',
  } satisfies Record<GroundlineZone['at'], string>,
  fringe: 'Water rises in the soil over the water table. How far it rises is a range from tables.',
  noRise: 'How far water rises over the water table in this soil was not found, so it is not drawn.',

  top: {
    title: 'Rain at the top',
    ground: 'Rain runs off the top and onto the ground.',
    post: 'Rain ends at the post.',
    bracket: 'Rain ends at the bracket.',
    reasons: {
      'top-slopes-in': 'The top slopes in to the post like a dish.',
      'top-is-level': 'The top is level, so water stands on it.',
      'post-fills-hole': 'The post fills the hole, so no top is left to slope.',
      'rim-below-uphill-grade': 'The rim is lower than the ground uphill, so water runs in over it.',
      'heaped-over': 'Soil or mulch is heaped on the top and holds water against the wood.',
      'soil-against-post': 'Soil lies against the post, and the ground does not fall away from it.',
    } satisfies Record<WaterReason, string>,
    sheet: 'Water that runs down from uphill reaches the pier.',
    swale: 'A swale leads the water from uphill round the pier.',
    ponds: (volume: string): string => `The dish holds ${volume} of water when it is full.`,
    fallReached: 'The ground falls away at least 6 in within 10 ft, as the rule for houses asks.',
    fallShort: 'The ground falls away less than 6 in within 10 ft. The rule was written for house walls; it is good practice here.',
    splash: (to: string, heavy: string): string =>
      `Rain splashes wood up to ${to} over the ground. A heavy rain is said to reach ${heavy}.`,
    takesRain: 'The ground takes the rain that you entered, and no water stands on it.',
    noTexture: 'Enter the soil texture to see when water stands on the ground.',
  },
  joint: {
    title: 'The joint between wood and concrete',
    open: (widest: string, reach: string): string =>
      `The wood dries and shrinks away from the concrete. The gap at one face may be up to ${widest} at the top, and is drawn closed at ${reach} down.`,
    closed: 'The wood was no wetter when it was set than it is later, so no gap opens by drying.',
    limit: 'Gaps round building posts were never measured. This is worked out from tables of how wood shrinks.',
    none: 'Nothing that sets hard reaches the top of the ground along the wood, so there is no open joint.',
  },

  said: {
    title: 'What the trade says, and what was found',
    trade: 'Common practice says',
    forIt: 'Speaks for it',
    against: 'Speaks against it',
    missing: 'Looked for and not found',
    nothing: 'Nothing was found.',
  },
  traps: {
    'trap-concrete-rots-posts':
      'No field study found shows that concrete rots treated posts. In one lab study, concrete left the wood better, the same or worse. It went by the treatment.',
    'trap-concrete-protects-posts':
      'No field study found shows that concrete keeps posts sound. It keeps soil off, but an open joint can hold water.',
    'trap-climate-index-for-buried-wood':
      'A climate index speaks of wood above ground alone. For wood in the ground the risk is high in any climate.',
    'trap-six-inches-in-ten-feet': '6 in within 10 ft is a fall of 5%, not 6%.',
    'trap-gravel-drains-the-hole': 'Gravel under a post drains only if the ground below it drains. In tight clay it fills up with water.',
  },
} as const
