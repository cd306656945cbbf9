import { type Metres, metres } from '../../../src/core/units/quantity.ts'
import { cited } from '../../../src/core/engineering/cited.ts'
import { showing } from '../../../src/core/engineering/showing.ts'

/** Loss of size for each percent of moisture lost, 0.2 %. Source: missouri-shrinkage-4-34. */
export const shrinkagePerPercent = cited(0.2, '1', 'missouri-shrinkage-4-34', 'published, recomputed')

type Inputs = Readonly<{ size: Metres; before: number; now: number; rate: number }>

/**
 * Size lost by the rule of a fixed share for each percent of moisture.
 * @param size across the grain at the moisture `before` [m], positive
 * @param before moisture at first, water by mass of dry wood [1]
 * @param now moisture later [1]
 * @param rate share lost for each share of moisture [1], 0.2
 * @returns size lost [m]; negative where the wood swells
 * Formula: dD = D k (M1 - M2)
 * Valid: below fibre saturation. Outside: above it wood does not move.
 * Source: missouri-shrinkage-4-34
 * Checked by: tests/external/missouri-shrinkage-4-34/check.test.ts
 */
export function ruleShrinkage({ size, before, now, rate }: Inputs): Metres {
  return metres(size * rate * (before - now))
}

/** Size lost by the rule, with its work shown. */
export const workedRuleShrinkage = showing({
  id: 'rule-shrinkage',
  quantity: 'length',
  formula: String.raw`\Delta D = D\,k\,(M_1 - M_2)`,
  terms: { size: ['D', 'length'], rate: ['k', 'ratio'], before: ['M_1', 'ratio'], now: ['M_2', 'ratio'] },
  sources: ['missouri-shrinkage-4-34'],
  of: ruleShrinkage,
})
