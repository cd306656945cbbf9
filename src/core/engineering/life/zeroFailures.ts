import { showing } from '../showing.ts'

type Inputs = Readonly<{ sample: number; confidence: number }>

/**
 * Greatest share of failures that a sample with none in it cannot rule out.
 * @param sample number watched, none failed [1], 1 or more
 * @param confidence of the bound [1], above 0 and below 1
 * @returns share [1]; null outside those limits
 * Formula: p = 1 - (1 - c)^(1/n)
 * Valid: a sample like what it is used for. Outside: posts in another soil or with another treatment are not in it.
 * Source: binomial-bound
 * Checked by: tests/external/binomial-bound/check.test.ts
 */
export function zeroFailureBound({ sample, confidence }: Inputs): number | null {
  if (!(sample >= 1) || !(confidence > 0 && confidence < 1)) return null
  return -Math.expm1(Math.log1p(-confidence) / sample)
}

/**
 * The same as a count out of the sample, for people.
 * @param sample number watched, none failed [1], 1 or more
 * @param confidence of the bound [1]
 * @returns whole number out of `sample` [1], rounded; null outside the limits
 * Formula: round(n p)
 * Valid: as above. Outside: as above.
 * Source: binomial-bound
 * Checked by: tests/external/binomial-bound/check.test.ts
 */
export function zeroFailureCount({ sample, confidence }: Inputs): number | null {
  const bound = zeroFailureBound({ sample, confidence })
  return bound === null ? null : Math.round(sample * bound)
}

/** Share that cannot be ruled out, with its work shown. */
export const workedZeroFailureBound = showing({
  id: 'zero-failure-bound',
  quantity: 'ratio',
  formula: 'p = 1 - (1 - c)^{1/n}',
  terms: { confidence: ['c', 'ratio'], sample: ['n', 'count'] },
  sources: ['binomial-bound'],
  of: zeroFailureBound,
})
