import { weakest, worked } from '../../engineering/showing.ts'
import type { Worked } from '../../model/worked.ts'

/** Side friction with its factor inside, plus 0.6 of the weight: one factor on each, never two on one. */
export const frictionPlusWeight = (friction: Worked, factored: Worked): Worked =>
  worked('allowable-soil-uplift', friction.value + factored.value, 'force', () => ({
    formula: String.raw`T_a = R + 0.6\,D`,
    inputs: [
      { symbol: 'R', name: 'friction', value: friction.value, quantity: 'force' },
      { symbol: String.raw`0.6\,D`, name: 'weight', value: factored.value, quantity: 'force' },
    ],
    sources: [...new Set([...friction.sources, ...factored.sources])],
    standing: weakest(friction.standing, factored.standing),
  }))
