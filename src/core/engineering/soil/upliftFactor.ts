import { type Newtons, newtons } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

const factor = (printed: number) => cited(printed, '1', 'ibc-1810-3-3-1-5', 'read')
/** Safety factors on ultimate uplift resistance of one deep foundation: by analysis or by load test; ordinary or wind. Source: ibc-1810-3-3-1-5. */
export const upliftFactors = {
  analysis: { ordinary: factor(3), wind: factor(2) },
  test: { ordinary: factor(2), wind: factor(1.5) },
} as const

type Inputs = Readonly<{ ultimate: Newtons; factor: number }>

/**
 * Allowable uplift from an ultimate resistance.
 * @param ultimate resistance by analysis or test [N]
 * @param factor safety factor [1]: 3, with wind 2, by analysis
 * @returns allowable resistance [N]
 * Formula: R = Ru / FS
 * Valid: ultimate values only. Outside: presumptive values and 0.6 D already hold their factor; never divide them again.
 * Source: ibc-1810-3-3-1-5
 * Checked by: tests/external/gec-10-2018/check.test.ts
 */
export function allowableUplift({ ultimate, factor: fs }: Inputs): Newtons {
  return newtons(ultimate / fs)
}

/** Allowable uplift, with its work shown. */
export const workedAllowableUplift = showing({
  id: 'allowable-uplift',
  quantity: 'force',
  formula: 'R = R_u / F_S',
  terms: { ultimate: ['R_u', 'force'], factor: ['F_S', 'ratio'] },
  sources: ['ibc-1810-3-3-1-5'],
  of: allowableUplift,
})
