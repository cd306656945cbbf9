import { showing } from '../showing.ts'
import { fullHydrationRatio } from '../tables/hydration.ts'

/** Is more water to be had from outside while the cement hydrates? */
export type Curing = keyof typeof fullHydrationRatio
type Inputs = Readonly<{ ratio: number; curing: Curing }>

/**
 * Greatest share of the cement that the water lets hydrate.
 * @param ratio water over cement by weight [1], non-negative
 * @param curing 'sealed', or 'outsideWater' where the ground gives more [1]
 * @returns degree of hydration [1], at most 1
 * Formula: a = min(1, (w/c)/0.42) sealed, min(1, (w/c)/0.36) with outside water
 * Valid: in time without end. Outside: an upper bound at any age.
 * Source: hydration-water, powers-gel-space
 * Checked by: tests/core/engineering/mix/gelSpace.test.ts
 */
export function hydrationLimit({ ratio, curing }: Inputs): number {
  return Math.min(1, ratio / fullHydrationRatio[curing].value)
}

/** Greatest hydration, with its work shown. */
export const workedHydrationLimit = showing({
  id: 'hydration-limit',
  quantity: 'ratio',
  formula: ({ curing }: Inputs) => String.raw`\alpha = \min\left(1,\ \frac{w/c}{${fullHydrationRatio[curing].printed}}\right)`,
  terms: { ratio: ['w/c', 'ratio'] },
  sources: ['hydration-water', 'powers-gel-space'],
  of: hydrationLimit,
})
