import { type Seconds, seconds } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

/** Inherent quality, design, work, indoor and outdoor surroundings, use, upkeep. Source: iso-15686. */
export const lifeFactors = ['A', 'B', 'C', 'D', 'E', 'F', 'G'] as const
export type LifeFactor = (typeof lifeFactors)[number]
export type LifeFactors = Readonly<Record<LifeFactor, number>>

/** Every factor at 1: the standard gives no values, so none is set before the user does. Source: iso-15686-8-scope. */
export const neutralFactors: LifeFactors = { A: 1, B: 1, C: 1, D: 1, E: 1, F: 1, G: 1 }

/** Bounds of one factor that teaching keeps to; not from the standard. Source: factor-bounds. */
export const factorBounds = {
  low: cited(0.8, '1', 'factor-bounds', 'from memory'),
  high: cited(1.2, '1', 'factor-bounds', 'from memory'),
} as const

type Inputs = Readonly<{ reference: Seconds; factors: LifeFactors }>

/**
 * Estimated service life by the factor method.
 * @param reference life of a cited row, or the user's own [s], positive
 * @param factors A to G, each 1 until changed [1], positive
 * @returns estimated life [s]
 * Formula: ESL = RSL A B C D E F G
 * Valid: a reference that was observed. Outside: the factors are opinions; show a range, never one year.
 * Source: iso-15686
 * Checked by: tests/external/water-and-time-examples/check.test.ts
 */
export function estimatedLife({ reference, factors }: Inputs): Seconds {
  return seconds(lifeFactors.reduce<number>((life, factor) => life * factors[factor], reference))
}

/**
 * Factors outside the customary bounds: nothing is cut back, the user is told.
 * @param factors A to G [1]
 * @returns letters outside 0.8 to 1.2, in order [1]
 * Formula: f < 0.8 or f > 1.2
 * Valid: always. Outside: none.
 * Source: factor-bounds
 * Checked by: tests/core/engineering/life/factorMethod.test.ts
 */
export function factorsOutside(factors: LifeFactors): readonly LifeFactor[] {
  const { low, high } = factorBounds
  return lifeFactors.filter((factor) => factors[factor] < low.value - 1e-12 || factors[factor] > high.value + 1e-12)
}

export type LifeBand = Readonly<{ low: Seconds; high: Seconds }>
type BandInputs = Readonly<{ reference: LifeBand; low: LifeFactors; high: LifeFactors }>

/**
 * Estimated life as a range.
 * @param reference least and greatest reference life [s]
 * @param low factors at their least [1]
 * @param high factors at their greatest [1]
 * @returns least and greatest estimated life [s]
 * Formula: product of the least, product of the greatest
 * Valid: as for one estimate. Outside: seven factors of 0.8 to 1.2 alone spread it from 0.21 to 3.58.
 * Source: iso-15686
 * Checked by: tests/external/water-and-time-examples/check.test.ts
 */
export function estimatedLifeBand({ reference, low, high }: BandInputs): LifeBand {
  return {
    low: estimatedLife({ reference: reference.low, factors: low }),
    high: estimatedLife({ reference: reference.high, factors: high }),
  }
}

type Flat = Readonly<{ reference: Seconds } & LifeFactors>

/** Estimated life, with its work shown. */
export const workedEstimatedLife = showing({
  id: 'estimated-life',
  quantity: 'life',
  formula: String.raw`\mathrm{ESL} = \mathrm{RSL}\cdot A\,B\,C\,D\,E\,F\,G`,
  terms: {
    reference: [String.raw`\mathrm{RSL}`, 'life'],
    A: ['A', 'ratio'],
    B: ['B', 'ratio'],
    C: ['C', 'ratio'],
    D: ['D', 'ratio'],
    E: ['E', 'ratio'],
    F: ['F', 'ratio'],
    G: ['G', 'ratio'],
  },
  sources: ['iso-15686'],
  of: ({ reference, ...factors }: Flat) => estimatedLife({ reference, factors }),
})
