import type { Field } from './field.ts'
import type { PierSpec } from './spec.ts'
import type { QuantityKind } from '../units/quantity.ts'
import { toSI, type UnitId } from '../units/factors.ts'

type Shown = (spec: PierSpec) => boolean
type Options = Readonly<{ shown?: Shown; nullable?: boolean; unit?: Readonly<{ us: UnitId; metric: UnitId }> }>
type Bounds = Readonly<{ from: number; to: number; in: UnitId; step: number; metric: number; metricUnit: UnitId }>

const visibility = (shown: Shown | undefined) => (shown === undefined ? {} : { visibleIf: shown })

/** A difference, which scales of temperature count from no zero. */
const stepSI = (step: number, unit: UnitId): number => toSI(step, unit) - toSI(0, unit)

/** A number with a unit. Bounds and the US step are given in `bounds.in`, the metric step in `bounds.metricUnit`; all kept in SI. */
export const numberField = (path: string, group: Field['group'], quantity: QuantityKind, bounds: Bounds, options: Options = {}): Field => ({
  path,
  group,
  type: 'number',
  quantity,
  min: toSI(bounds.from, bounds.in),
  max: toSI(bounds.to, bounds.in),
  step: { us: stepSI(bounds.step, bounds.in), metric: stepSI(bounds.metric, bounds.metricUnit) },
  ...(options.nullable ? { nullable: true } : {}),
  ...(options.unit ? { unit: options.unit } : {}),
  ...visibility(options.shown),
})

/** A length bounded in inches; the metric step is 10 mm for steps of an inch and more, else 1 mm. */
export const inches = (path: string, group: Field['group'], from: number, to: number, step: number, options: Options = {}): Field =>
  numberField(path, group, 'length', { from, to, in: 'in', step, metric: step >= 1 ? 10 : 1, metricUnit: 'mm' }, options)

/** A whole number. */
export const countField = (path: string, group: Field['group'], from: number, to: number, options: Options = {}): Field =>
  numberField(path, group, 'count', { from, to, in: '1', step: 1, metric: 1, metricUnit: '1' }, options)

export const choiceField = (path: string, group: Field['group'], choices: readonly (string | number)[], options: Options = {}): Field => ({
  path,
  group,
  type: 'choice',
  choices,
  ...(options.nullable ? { nullable: true } : {}),
  ...visibility(options.shown),
})

/** An optional part: null, or an object filled with `initial` when it is switched on. */
export const partField = (path: string, group: Field['group'], initial: unknown, options: Options = {}): Field => ({
  path,
  group,
  type: 'part',
  initial,
  ...visibility(options.shown),
})
