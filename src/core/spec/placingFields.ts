import { choiceField, countField, numberField } from '../model/fieldMakers.ts'
import type { Field } from '../model/field.ts'
import type { PierSpec, Placing } from '../model/spec.ts'
import { toSI } from '../units/factors.ts'
import { celsius, cubicMetres, unitWeight } from '../units/quantity.ts'
import { isWatered, placesDryMix, usesConcrete } from './placement.ts'

/** Two gallons poured, mild weather, and the loose weight of dry mix that quantities use. Chosen here, to be typed over; no source. */
export const firstPlacing: Placing = {
  poured: cubicMetres(toSI(2, 'gal')),
  looseWeight: unitWeight(toSI(110, 'pcf')),
  cement: 'I',
  air: 'no',
  addedWater: 0,
  temperature: celsius(toSI(68, 'degF')),
  coldestAir: celsius(toSI(50, 'degF')),
  groundFrozen: 'no',
  share: toSI(75, '%'),
  pattern: 1,
}

const dry = { shown: placesDryMix }
const mixed = { shown: usesConcrete }
const setting = { shown: (spec: PierSpec) => usesConcrete(spec) || placesDryMix(spec) }
const weather = (path: string, from: number, to: number, shown: typeof dry) =>
  numberField(path, 'concrete', 'temperature', { from, to, in: 'degF', step: 1, metric: 1, metricUnit: 'degC' }, shown)

/** How the mix is placed, the water it gets and the weather it meets. Bounds are those of the tool, set here; no source. */
export const placingFields: readonly Field[] = [
  numberField(
    'placing.poured',
    'concrete',
    'volume',
    { from: 0, to: 60, in: 'gal', step: 0.5, metric: 1, metricUnit: 'L' },
    { shown: isWatered, unit: { us: 'gal', metric: 'L' } },
  ),
  numberField(
    'placing.looseWeight',
    'concrete',
    'unitWeight',
    { from: 90, to: 140, in: 'pcf', step: 1, metric: 0.1, metricUnit: 'kN/m3' },
    dry,
  ),
  choiceField('placing.cement', 'concrete', ['I', 'III'], setting),
  choiceField('placing.air', 'concrete', ['no', 'yes'], mixed),
  numberField(
    'placing.addedWater',
    'concrete',
    'dosage',
    { from: 0, to: 20, in: 'gal/yd3', step: 0.5, metric: 1, metricUnit: 'L/m3' },
    mixed,
  ),
  weather('placing.temperature', 14, 113, setting),
  weather('placing.coldestAir', -40, 113, setting),
  choiceField('placing.groundFrozen', 'concrete', ['no', 'yes'], setting),
  numberField('placing.share', 'concrete', 'ratio', { from: 10, to: 100, in: '%', step: 5, metric: 5, metricUnit: '%' }, mixed),
  countField('placing.pattern', 'concrete', 1, 999, dry),
]
