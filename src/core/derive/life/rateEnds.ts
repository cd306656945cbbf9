import { realRates } from '../../engineering/tables/costDefaults.ts'
import type { PierSpec } from '../../model/spec.ts'
import type { Band, LifeResult } from '../../model/timeResult.ts'
import { deriveCost } from './deriveCost.ts'

/** Present value at a low and a high real rate, beside that at the rate entered. Empty where none can be told. */
export const costAtRateEnds = (spec: PierSpec, life: LifeResult): readonly Readonly<{ rate: number; present: Band }>[] =>
  [realRates.low.value, realRates.high.value].flatMap((rate) => {
    const present = spec.costs && deriveCost({ ...spec, costs: { ...spec.costs, rate } }, life)?.present
    return present ? [{ rate, present }] : []
  })
