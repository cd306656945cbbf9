import type { FillId, MonthKey } from '../../core/model/spec.ts'
import { fills } from './kinds.ts'

/** Words of the inputs that tell of placing, water, years and prices. */
type FieldWords = Readonly<{ label: string; help: string; none?: string }>

const months: Readonly<Record<MonthKey, string>> = {
  m01: 'January',
  m02: 'February',
  m03: 'March',
  m04: 'April',
  m05: 'May',
  m06: 'June',
  m07: 'July',
  m08: 'August',
  m09: 'September',
  m10: 'October',
  m11: 'November',
  m12: 'December',
}
const monthFields = <Prefix extends string>(prefix: Prefix, what: string, help: string) =>
  Object.fromEntries(Object.entries(months).map(([key, month]) => [`${prefix}.${key}`, { label: `${month}, ${what}`, help }])) as Readonly<
    Record<`${Prefix}.${MonthKey}`, FieldWords>
  >

const priceFields = Object.fromEntries(
  Object.entries(fills).flatMap(([kind, { label: method }]) => [
    [
      `costs.prices.${kind}.first`,
      { label: `${method}: first cost`, help: 'What one pier costs, built this way. Your own price.', none: 'Not known' },
    ],
    [
      `costs.prices.${kind}.replacement`,
      {
        label: `${method}: replacing the post`,
        help: 'Under a standing building: shoring, taking the old post out, a new one in. Your own price.',
        none: 'Not known',
      },
    ],
  ]),
) as Readonly<Record<`costs.prices.${FillId}.${'first' | 'replacement'}`, FieldWords>>

const factorHelp = 'A matter of opinion. The standard gives no values. Leave it at 1 unless you can say why.'

export const timeFields = {
  'placing.poured': { label: 'Water poured on', help: 'All the water that goes on the dry mix in this hole.' },
  'placing.looseWeight': { label: 'Loose weight of the mix', help: 'Weight of dry mix as it lies in the hole. Tamped mix is heavier.' },
  'placing.cement': { label: 'Cement', help: 'Type I is common. Type III gains strength sooner.' },
  'placing.air': { label: 'Air-entrained', help: 'Tiny bubbles made on purpose, against frost. It is on the ticket.' },
  'placing.addedWater': {
    label: 'Water added at the site',
    help: 'Water put into mixed concrete after it left the plant. It costs strength.',
  },
  'placing.temperature': { label: 'Concrete temperature', help: 'Mean temperature of the concrete over its first weeks.' },
  'placing.coldestAir': { label: 'Coldest air', help: 'Lowest air temperature expected in the first days.' },
  'placing.groundFrozen': { label: 'Ground frozen', help: 'Nothing is placed on frozen ground.' },
  'placing.share': {
    label: 'Share of strength',
    help: 'The share of the 28-day strength whose day you want to know. When to load is the engineer’s call.',
  },
  'placing.pattern': {
    label: 'Picture of the pour',
    help: 'Each number draws another picture of how a dry pour might turn out. It is no forecast.',
  },
  'water.ground': { label: 'Ground over the year', help: 'Does the ground round the pier drain, stay damp, or stay wet?' },
  'water.texture': {
    label: 'Soil texture',
    help: 'From a soil survey or a feel test. It tells how fast the ground takes water.',
    none: 'Not known',
  },
  'water.around': { label: 'Ground beside the post', help: 'Rain splashes less off gravel.' },
  'water.fall': { label: 'Fall away from the pier', help: 'How much finished ground drops away on every side.', none: 'As the slope lies' },
  'water.swale': { label: 'Swale uphill', help: 'A shallow ditch that leads water round the pier.' },
  'water.rain': { label: 'Steady rain', help: 'A rain to hold the ground against.' },
  'water.atSetting': {
    label: 'Wood moisture when set',
    help: 'Fresh treated posts are often wetter than 30%. Water by weight of dry wood.',
  },
  'water.inService': { label: 'Wood moisture later', help: 'What the wood dries to at the top of the concrete.' },
  'water.jointReach': {
    label: 'Depth of the joint',
    help: 'How far down the gap between wood and concrete opens. Nobody has measured it.',
  },
  'life.reference': { label: 'Life to start from', help: 'What is known of such wood in the ground, one row of it, or your own years.' },
  'life.own.low': { label: 'Own life, least', help: 'The shortest life that you have seen.' },
  'life.own.high': { label: 'Own life, most', help: 'The longest life that you have seen.' },
  'life.factors.quality': { label: 'Quality of the post (A)', help: factorHelp },
  'life.factors.design': { label: 'Design (B)', help: factorHelp },
  'life.factors.work': { label: 'Work (C)', help: factorHelp },
  'life.factors.outdoors': { label: 'Outdoors (E)', help: factorHelp },
  'life.factors.use': { label: 'Use (F)', help: factorHelp },
  'life.factors.upkeep': { label: 'Upkeep (G)', help: factorHelp },
  'life.wide': { label: 'Factors beyond 0.8 to 1.2', help: 'For those who can say why.' },
  'life.decayZone': { label: 'Decay zone of the map', help: 'The zone on the pole map, 1 low to 5 severe.', none: 'Not known' },
  'life.climate': { label: 'Climate record', help: 'Months of a place, for wood above ground alone.', none: 'None' },
  'life.months': { label: 'Own climate', help: 'Twelve months: mean temperature, and days with at least 0.25 mm (0.01 in) of rain.' },
  ...monthFields('life.months.temperature', 'mean temperature', 'Mean over the month, day and night.'),
  ...monthFields(
    'life.months.rainDays',
    'rain days',
    'Days with at least 0.25 mm (0.01 in). Many records count from 1 mm, and that is too few.',
  ),
  costs: { label: 'Cost over the years', help: 'Your own prices. None is built in.' },
  'costs.rate': { label: 'Real rate a year', help: 'Interest with price rises taken off.' },
  'costs.horizon': { label: 'Years counted', help: 'How far ahead costs are counted.' },
  'costs.inspection': { label: 'One inspection', help: 'What one look at the post costs.' },
  'costs.every': { label: 'Years between inspections', help: 'How often somebody looks.' },
  ...priceFields,
} satisfies Readonly<Record<string, FieldWords>>

const yesNo = { no: 'No', yes: 'Yes' }

export const timeChoices: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'placing.cement': { I: 'Type I', III: 'Type III (early strength)' },
  'placing.air': yesNo,
  'placing.groundFrozen': yesNo,
  'water.ground': { drains: 'Drains', damp: 'Stays damp', wet: 'Stays wet' },
  'water.texture': {
    sand: 'Sand',
    'loamy-sand': 'Loamy sand',
    'sandy-loam': 'Sandy loam',
    loam: 'Loam',
    'silt-loam': 'Silt loam',
    'sandy-clay-loam': 'Sandy clay loam',
    'clay-loam': 'Clay loam',
    'silty-clay-loam': 'Silty clay loam',
    'sandy-clay': 'Sandy clay',
    'silty-clay': 'Silty clay',
    clay: 'Clay',
  },
  'water.around': { ground: 'Bare or paved', gravel: 'Gravel strip' },
  'water.swale': yesNo,
  'life.wide': yesNo,
  'life.decayZone': { '1': '1, low', '2': '2', '3': '3', '4': '4', '5': '5, severe' },
  'life.climate': { seattle: 'Seattle, 2012 to 2015' },
  'life.reference': {
    rows: 'All rows that fit',
    own: 'My own years',
    'common-practice-ten-years': 'Rule of thumb, wet soil',
    'stakes-panama': 'Bare pine stakes, Panama',
    'stakes-gulf': 'Bare pine stakes, Gulf states',
    'stakes-wisconsin': 'Bare pine stakes, Wisconsin',
    'posts-mississippi-untreated': 'Bare pine posts, Mississippi',
    'posts-oregon-fir': 'Bare fir posts, Oregon',
    'posts-oregon-osage': 'Osage-orange posts, Oregon',
    'posts-southwest-oak': 'Oak posts, Arizona and New Mexico',
    'posts-aca-50': 'ACA posts, Mississippi',
    'posts-creosote-50': 'Creosote posts, Mississippi',
    'posts-creosote-low': 'Creosote posts, little in them',
    'posts-penta-60': 'Penta posts',
    'posts-copper-naphthenate': 'Copper naphthenate posts',
    'lumber-copper-naphthenate': 'Copper naphthenate lumber',
    'posts-aca-low': 'ACA posts, little in them',
    'posts-mississippi-oil': 'Oil-treated posts, Mississippi',
  },
}
