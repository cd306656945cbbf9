import { costHorizon, realRates } from '../engineering/tables/costDefaults.ts'
import { fillKinds } from '../kinds/index.ts'
import { numberField, partField } from '../model/fieldMakers.ts'
import type { Field } from '../model/field.ts'
import type { Costs, FillId, PierSpec } from '../model/spec.ts'
import { toSI } from '../units/factors.ts'
import { seconds } from '../units/quantity.ts'

/** No price is built in: none was found published, and every one is the user's. */
export const firstCosts: Costs = {
  rate: realRates.start.value,
  horizon: costHorizon.value,
  inspection: 0,
  every: seconds(toSI(5, 'yr')),
  prices: Object.fromEntries(fillKinds.map((kind) => [kind.id, { first: null, replacement: null }])) as Costs['prices'],
}

const counted = { shown: (spec: PierSpec) => spec.costs !== null }
const money = (path: string, nullable: boolean) =>
  numberField(path, 'years', 'money', { from: 0, to: 1_000_000, in: '1', step: 10, metric: 10, metricUnit: '1' }, { ...counted, nullable })
const span = (path: string, from: number, to: number) =>
  numberField(path, 'years', 'life', { from, to, in: 'yr', step: 1, metric: 1, metricUnit: 'yr' }, counted)

export const priceNames = ['first', 'replacement'] as const
/** The input that holds one price of one way to fill the hole. */
export const pricePath = (kind: FillId, name: (typeof priceNames)[number]): string => `costs.prices.${kind}.${name}`

/** Prices and how they are reckoned over the years. Bounds are those of the tool, set here; no source. */
export const costFields: readonly Field[] = [
  partField('costs', 'years', firstCosts),
  numberField('costs.rate', 'years', 'ratio', { from: 0, to: 15, in: '%', step: 0.5, metric: 0.5, metricUnit: '%' }, counted),
  span('costs.horizon', 10, 100),
  money('costs.inspection', false),
  span('costs.every', 1, 60),
  ...fillKinds.flatMap((kind) => priceNames.map((name) => money(pricePath(kind.id, name), true))),
]
