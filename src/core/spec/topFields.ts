import type { Field } from '../model/field.ts'
import type { PierSpec } from '../model/spec.ts'
import { choiceField, countField, inches, numberField, partField } from '../model/fieldMakers.ts'
import { toSI } from '../units/factors.ts'
import { pascals } from '../units/quantity.ts'
import { hasTop, usesConcrete } from './placement.ts'

const finished = { shown: hasTop }
const shaped = { shown: (spec: PierSpec) => hasTop(spec) && spec.top.shape !== 'flat' }

export const topFields: readonly Field[] = [
  choiceField('top.shape', 'top', ['flat', 'crowned', 'dished'], finished),
  inches('top.rise', 'top', 0, 12, 0.25, shaped),
  inches('top.rim', 'top', -24, 24, 0.5, finished),
  inches('top.heaped', 'top', 0, 12, 0.5, finished),
]

const cast = { shown: usesConcrete }

const core = pascals(toSI(3000, 'psi'))
const firstCores = { first: core, second: core, third: core }
const cored = { shown: (spec: PierSpec) => spec.concrete.cores !== null }

export const concreteFields: readonly Field[] = [
  numberField(
    'concrete.strength',
    'concrete',
    'strength',
    { from: 1000, to: 10_000, in: 'psi', step: 250, metric: 1, metricUnit: 'MPa' },
    cast,
  ),
  choiceField('concrete.unitWeight', 'concrete', ['plain', 'reinforced'], cast),
  choiceField('concrete.bagSize', 'concrete', [50, 60, 80], cast),
  numberField('concrete.waste', 'concrete', 'ratio', { from: 0, to: 50, in: '%', step: 1, metric: 1, metricUnit: '%' }),
  countField('piers', 'concrete', 1, 500),
  partField('concrete.cores', 'concrete', firstCores, cast),
  ...['first', 'second', 'third'].map((name) =>
    numberField(
      `concrete.cores.${name}`,
      'concrete',
      'strength',
      { from: 100, to: 12_000, in: 'psi', step: 50, metric: 0.5, metricUnit: 'MPa' },
      cored,
    ),
  ),
]
