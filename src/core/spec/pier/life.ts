import { climateRecordIds } from '../../engineering/tables/climateRecords.ts'
import { costHorizon, realRates } from '../../engineering/tables/costDefaults.ts'
import { referenceRows } from '../../engineering/tables/referenceRows.ts'
import { degrees, each, group, money, oneOf, part, ratio, span, yesNo } from '../../fields/makers.ts'
import { type AnyFillKind, fillKinds } from '../../kinds/index.ts'

/** Months to type over, and what a silent link means: those of the first packaged record. */
const months = [
  { id: 'm01', temperature: '5.5 degC', rainDays: '1650 %', letter: 'a' },
  { id: 'm02', temperature: '7 degC', rainDays: '1825 %', letter: 'b' },
  { id: 'm03', temperature: '8.6 degC', rainDays: '1825 %', letter: 'c' },
  { id: 'm04', temperature: '10.7 degC', rainDays: '1475 %', letter: 'd' },
  { id: 'm05', temperature: '58.1 degF', rainDays: '850 %', letter: 'e' },
  { id: 'm06', temperature: '17.3 degC', rainDays: '925 %', letter: 'f' },
  { id: 'm07', temperature: '20.1 degC', rainDays: '275 %', letter: 'g' },
  { id: 'm08', temperature: '20.4 degC', rainDays: '550 %', letter: 'h' },
  { id: 'm09', temperature: '17.1 degC', rainDays: '875 %', letter: 'i' },
  { id: 'm10', temperature: '12.9 degC', rainDays: '1525 %', letter: 'j' },
  { id: 'm11', temperature: '7.9 degC', rainDays: '1775 %', letter: 'k' },
  { id: 'm12', temperature: '5.8 degC', rainDays: '2025 %', letter: 'l' },
] as const

const plain = { us: '1', metric: '1' } as const
const years = (link: string, silent: string) => span({ from: '1 yr', to: '150 yr', link, silent })
const factor = (link: string) => ratio({ from: '0.2', to: '2', step: '0.05', unit: plain, link, silent: '100 %' })

/** What a range of life is taken from. Nothing weighed yet: every row of evidence, every factor at one. */
export const lifeFields = group(
  {
    /** 'rows': every row of evidence that speaks of such wood; else one row, or the user's own years. */
    reference: oneOf(['rows', 'own', ...referenceRows], { link: 'ia', silent: 'rows' }),
    /** An invented start, to be typed over. */
    own: group({ low: years('ib', '15 yr'), high: years('ic', '40 yr') }, { when: 'own years' }),
    /** Factors A to G but for D, indoor surroundings, which a pier has not. 1 until changed. */
    factors: group({
      quality: factor('id'),
      design: factor('ie'),
      work: factor('if'),
      outdoors: factor('ig'),
      use: factor('ih'),
      upkeep: factor('ij'),
    }),
    /** May a factor go beyond its customary bounds? */
    wide: yesNo({ link: 'ik', silent: 'no' }),
    /** Zone of decay of poles, 1 low to 5 severe; null where it is not known. */
    decayZone: oneOf([1, 2, 3, 4, 5], { link: 'il', silent: null }),
    /** A packaged record of a climate. Months entered go before it. */
    climate: oneOf(climateRecordIds, { when: 'no own months', link: 'im', silent: null }),
    /** Mean temperature of each month, and its days with 0.25 mm of rain or more. */
    months: part(
      {
        temperature: group(
          each(months, ({ temperature, letter }) =>
            degrees({ from: '-40 degC', to: '50 degC', step: '1 degC', link: `y${letter}`, silent: temperature }),
          ),
        ),
        rainDays: group(
          each(months, ({ rainDays, letter }) =>
            ratio({ from: '0', to: '31', step: '1', unit: plain, link: `z${letter}`, silent: rainDays }),
          ),
        ),
      },
      { link: 'in' },
    ),
  },
  { group: 'years', leftOut: 'start' },
)

const price = (link: string) => money({ from: '0', to: '1000000', link, silent: null })

/** Prices and how they are reckoned over the years, in the money that the user thinks in, of one day. None is built in: none was found published. */
export const costFields = part(
  {
    /** Real, a year. */
    rate: ratio({ from: '0 %', to: '15 %', step: '0.5 %', start: realRates.start.value, link: 'kb', silent: '3 %' }),
    horizon: span({ from: '10 yr', to: '100 yr', start: costHorizon.value, link: 'kc', silent: '60 yr' }),
    inspection: money({ from: '0', to: '1000000', link: 'kd', silent: '0' }),
    /** Time between two inspections. */
    every: span({ from: '1 yr', to: '60 yr', link: 'ke', silent: '5 yr' }),
    /** For one pier built each way: first cost, and its replacement under a standing building; null where not known. */
    prices: group(each(fillKinds, ({ prices }) => group({ first: price(prices.first), replacement: price(prices.replacement) }))),
  },
  { group: 'years', link: 'ka' },
)

export const priceNames = ['first', 'replacement'] as const
/** The input that holds one price of one way to fill the hole. */
export const pricePath = (kind: AnyFillKind['id'], name: (typeof priceNames)[number]): string => `costs.prices.${kind}.${name}`
