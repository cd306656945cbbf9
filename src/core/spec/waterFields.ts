import { soilWetnesses } from '../engineering/moisture/soilWetness.ts'
import { textures } from '../engineering/tables/infiltration.ts'
import { wedgeReach } from '../engineering/moisture/jointGap.ts'
import { choiceField, inches, numberField } from '../model/fieldMakers.ts'
import type { Field } from '../model/field.ts'
import type { Water } from '../model/spec.ts'
import { toSI } from '../units/factors.ts'
import { metresPerSecond } from '../units/quantity.ts'

/** Damp ground, and treated wood that was set wet. Chosen here, to be changed; no source. */
export const firstWater: Water = {
  ground: 'damp',
  texture: null,
  around: 'ground',
  fall: null,
  swale: 'no',
  rain: metresPerSecond(toSI(1, 'in/h')),
  atSetting: toSI(30, '%'),
  inService: toSI(15, '%'),
  jointReach: wedgeReach.value,
}

const moisture = (path: string, from: number, to: number) =>
  numberField(path, 'water', 'ratio', { from, to, in: '%', step: 1, metric: 1, metricUnit: '%' })

/** What wets the wood. Bounds are those of the tool, set here; no source. */
export const waterFields: readonly Field[] = [
  choiceField('water.ground', 'water', soilWetnesses),
  choiceField('water.texture', 'water', Object.keys(textures), { nullable: true }),
  choiceField('water.around', 'water', ['ground', 'gravel']),
  numberField('water.fall', 'water', 'slope', { from: 0, to: 25, in: '%', step: 1, metric: 1, metricUnit: '%' }, { nullable: true }),
  choiceField('water.swale', 'water', ['no', 'yes']),
  numberField('water.rain', 'water', 'rain', { from: 0, to: 10, in: 'in/h', step: 0.1, metric: 1, metricUnit: 'mm/h' }),
  moisture('water.atSetting', 6, 100),
  moisture('water.inService', 6, 60),
  inches('water.jointReach', 'water', 1, 60, 1),
]
