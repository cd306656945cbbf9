import { type Metres, type Slope, slope } from '../../units/quantity.ts'
import { showing } from '../showing.ts'
import { lotDrainage } from '../tables/lotDrainage.ts'

type FallInputs = Readonly<{ drop: Metres; run: Metres }>

/**
 * Fall of the ground away from a post.
 * @param drop of the ground over the run [m], negative where the ground rises away
 * @param run level distance [m], positive
 * @returns slope [rise/run]
 * Formula: s = drop/run
 * Valid: any. Outside: none.
 * Source: irc-r401-3
 * Checked by: tests/external/irc-r401-3/check.test.ts
 */
export function groundFall({ drop, run }: FallInputs): Slope {
  return slope(drop / run)
}

/** Fall that the rule asks for: 6 in within 10 ft [rise/run]. Source: irc-r401-3. */
export const leastFall: Slope = groundFall({ drop: lotDrainage.fall.value, run: lotDrainage.within.value })

export type FallVerdict = Readonly<{ reached: boolean; short: number; sources: readonly ['irc-r401-3'] }>

/**
 * Whether the ground falls away as the rule for lots asks.
 * @param fall of the ground away from the post [rise/run]
 * @returns whether it is reached, and what is missing [rise/run]
 * Formula: fall >= 6 in/10 ft = 5 %
 * Valid: the first 10 ft from a foundation wall. Outside: good practice for a pier in the open; local code decides.
 * Source: irc-r401-3
 * Checked by: tests/external/irc-r401-3/check.test.ts
 */
export function fallAway(fall: Slope): FallVerdict {
  const short = Math.max(0, leastFall - fall)
  return { reached: short <= 1e-9, short, sources: ['irc-r401-3'] }
}

/** Fall of the ground, with its work shown. */
export const workedGroundFall = showing({
  id: 'ground-fall',
  quantity: 'slope',
  formula: String.raw`s = \frac{\Delta y}{x}`,
  terms: { drop: [String.raw`\Delta y`, 'length'], run: ['x', 'length'] },
  sources: ['irc-r401-3'],
  of: groundFall,
})
