import { factorBounds } from '../engineering/life/factorMethod.ts'
import { climateRecordIds, climateRecords } from '../engineering/tables/climateRecords.ts'
import { referenceRows } from '../engineering/tables/referenceRows.ts'
import { choiceField, numberField, partField } from '../model/fieldMakers.ts'
import type { Field } from '../model/field.ts'
import type { ClimateMonths, Life, MonthKey, PierSpec } from '../model/spec.ts'
import { toSI, type UnitId } from '../units/factors.ts'
import { seconds } from '../units/quantity.ts'

const years = (value: number) => seconds(toSI(value, 'yr'))

/** Nothing weighed yet: every row of evidence, every factor at one. The two own years are an invented start, to be typed over. */
export const firstLife: Life = {
  reference: 'rows',
  own: { low: years(15), high: years(40) },
  factors: { quality: 1, design: 1, work: 1, outdoors: 1, use: 1, upkeep: 1 },
  wide: 'no',
  decayZone: null,
  climate: null,
  months: null,
}

export const factorNames = ['quality', 'design', 'work', 'outdoors', 'use', 'upkeep'] as const
export const monthKeys: readonly MonthKey[] = ['m01', 'm02', 'm03', 'm04', 'm05', 'm06', 'm07', 'm08', 'm09', 'm10', 'm11', 'm12']

const byMonth = <T>(value: (index: number) => T): Record<MonthKey, T> =>
  Object.fromEntries(monthKeys.map((key, index) => [key, value(index)])) as Record<MonthKey, T>
/** Months to type over start as those of the first packaged record. */
const firstMonths: ClimateMonths = {
  temperature: byMonth((index) => climateRecords.seattle.months[index]?.temperature ?? (0 as never)),
  rainDays: byMonth((index) => climateRecords.seattle.months[index]?.wetDays ?? 0),
}

const own = { shown: ({ life }: PierSpec) => life.reference === 'own' }
const entered = { shown: ({ life }: PierSpec) => life.months !== null }
const span = (path: string) => numberField(path, 'years', 'life', { from: 1, to: 150, in: 'yr', step: 1, metric: 1, metricUnit: 'yr' }, own)
const plain = (path: string, from: number, to: number, step: number, unit: UnitId, shown?: typeof own) =>
  numberField(
    path,
    'years',
    'ratio',
    { from, to, in: '1', step, metric: step, metricUnit: '1' },
    { ...shown, unit: { us: unit, metric: unit } },
  )

/** What a range of life is taken from. Bounds are those of the tool, set here; no source but for the factors' customary ones. */
export const lifeFields: readonly Field[] = [
  choiceField('life.reference', 'years', ['rows', 'own', ...referenceRows]),
  span('life.own.low'),
  span('life.own.high'),
  ...factorNames.map((name) => plain(`life.factors.${name}`, 0.2, 2, 0.05, '1')),
  choiceField('life.wide', 'years', ['no', 'yes']),
  choiceField('life.decayZone', 'years', [1, 2, 3, 4, 5], { nullable: true }),
  choiceField('life.climate', 'years', climateRecordIds, { nullable: true, shown: ({ life }) => life.months === null }),
  partField('life.months', 'years', firstMonths),
  ...monthKeys.map((key) =>
    numberField(
      `life.months.temperature.${key}`,
      'years',
      'temperature',
      { from: -40, to: 50, in: 'degC', step: 1, metric: 1, metricUnit: 'degC' },
      entered,
    ),
  ),
  ...monthKeys.map((key) => plain(`life.months.rainDays.${key}`, 0, 31, 1, '1', entered)),
]

/** Customary bounds of a factor, beyond which the user must ask to go. */
export const customary = { low: factorBounds.low.value, high: factorBounds.high.value } as const
