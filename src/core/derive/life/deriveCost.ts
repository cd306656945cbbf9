import { methodCostBand, timesBefore, workedMethodCost } from '../../engineering/life/methodCost.ts'
import { equalYearlyCost } from '../../engineering/life/presentValue.ts'
import { weakest } from '../../engineering/showing.ts'
import { pricePath, priceNames } from '../../spec/pier/life.ts'
import type { PierSpec } from '../../model/spec.ts'
import { seconds } from '../../units/quantity.ts'
import type { CostResult, LifeResult } from '../../model/timeResult.ts'

/**
 * What one way of building costs over the years, from the user's own prices. Null while none are entered.
 * @param spec a valid spec
 * @param life of its post; without a range nothing can be said of replacements, and so nothing of cost
 */
export function deriveCost({ costs, fill }: PierSpec, life: LifeResult): CostResult | null {
  if (costs === null) return null
  const price = costs.prices[fill.kind]
  const missing = priceNames.filter((name) => price[name] === null).map((name) => pricePath(fill.kind, name))
  const lacks = [...missing, ...(life.estimated ? [] : ['life'])]
  if (price.first === null || price.replacement === null || life.estimated === null)
    return { present: null, yearly: null, lacks, replacements: null, worked: [], sources: ['user'], standing: 'assumed here' }
  const { rate, horizon, inspection, every } = costs
  const prices = { first: price.first, replacement: price.replacement, inspection, every, horizon, rate }
  // A row that says "or more" may last out the horizon: at best no post is replaced.
  const { low } = life.estimated
  const lasts = { low, high: life.estimated.high ?? seconds(Math.max(low, horizon)) }
  const present = methodCostBand({ ...prices, life: lasts })
  const spread = (presentValue: number) => equalYearlyCost({ presentValue, rate, time: horizon }) ?? 0
  const use = (id: string) => ({ id, standings: [life.standing], sources: life.sources })
  const worked = [
    workedMethodCost({ ...prices, life: lasts.high }, use('method-cost-least')),
    workedMethodCost({ ...prices, life: lasts.low }, use('method-cost-most')),
  ]
  return {
    present,
    yearly: { low: spread(present.low), high: spread(present.high) },
    lacks,
    replacements: {
      low: timesBefore({ period: lasts.high, horizon }),
      high: timesBefore({ period: lasts.low, horizon }),
    },
    worked,
    sources: [...new Set(worked.flatMap((one) => one.sources))].sort(),
    standing: weakest('assumed here', ...worked.map((one) => one.standing)),
  }
}
