import { type Newtons, newtons } from '../../units/quantity.ts'
import type { Combination, CombinationEdition, DesignMethod, Factors, LoadKind } from '../tables/loadCombinations.ts'
import { loadCombinations } from '../tables/loadCombinations.ts'
import { showing } from '../showing.ts'

export type LoadsByKind = Readonly<Partial<Record<LoadKind, Newtons>>>

/**
 * Sum of loads with the factors of one combination.
 * @param factors of each kind of load [1]
 * @param loads of each kind [N], down positive, wind uplift negative
 * @returns combined load [N], down positive
 * Formula: sum of factor times load
 * Valid: linear. Outside: a kind without a load counts as none.
 * Source: asce-7-16-2
 * Checked by: tests/external/asce-7-16-27-3/check.test.ts
 */
export function combinedLoad(factors: Factors, loads: LoadsByKind): Newtons {
  let sum = 0
  for (const kind of ['dead', 'live', 'roofLive', 'snow', 'wind'] as const) sum += (factors[kind] ?? 0) * (loads[kind] ?? 0)
  return newtons(sum)
}

export type Governing = Readonly<{ combination: Combination; load: Newtons }>

/**
 * The combinations that push down most and pull up most.
 * @param edition 7-16 or 7-22 [1]
 * @param method ASD or LRFD [1]
 * @param loads of each kind [N], down positive
 * @returns all combined loads [N], the most and the least of them
 * Formula: every combination of the edition, without earthquake
 * Valid: gravity and wind. Outside: earthquake is not covered.
 * Source: asce-7-16-2, asce-7-22-2
 * Checked by: tests/external/asce-7-16-27-3/check.test.ts
 */
export function governingLoads(
  edition: CombinationEdition,
  method: DesignMethod,
  loads: LoadsByKind,
): Readonly<{ all: readonly Governing[]; down: Governing; up: Governing }> {
  const all = loadCombinations[edition][method].map((combination) => ({ combination, load: combinedLoad(combination.factors, loads) }))
  const pick = (better: (a: number, b: number) => boolean) => all.reduce((best, one) => (better(one.load, best.load) ? one : best))
  return { all, down: pick((a, b) => a > b), up: pick((a, b) => a < b) }
}

type UpliftInputs = Readonly<{ wind: Newtons; dead: Newtons; windFactor: number; deadFactor: number }>

/**
 * Net uplift at a post.
 * @param wind uplift at strength level [N], up positive
 * @param dead load on the post [N], down positive
 * @param windFactor on wind [1]: 0.6 allowable, 1 strength
 * @param deadFactor on dead load [1]: 0.6 allowable, 0.9 strength
 * @returns net uplift [N], up positive; negative when dead load wins
 * Formula: U = fW W - fD D
 * Valid: the uplift combinations. Outside: none.
 * Source: asce-7-16-2, ibc-1605-3
 * Checked by: tests/external/asce-7-16-27-3/check.test.ts
 */
export function netUplift({ wind, dead, windFactor, deadFactor }: UpliftInputs): Newtons {
  return newtons(windFactor * wind - deadFactor * dead)
}

/** Net uplift at a post, with its work shown. */
export const workedNetUplift = showing({
  id: 'net-uplift',
  quantity: 'force',
  formula: 'U = f_W W - f_D D',
  terms: { windFactor: ['f_W', 'ratio'], wind: ['W', 'force'], deadFactor: ['f_D', 'ratio'], dead: ['D', 'force'] },
  sources: ['asce-7-16-2', 'ibc-1605-3'],
  of: netUplift,
})

type CombinationInputs = LoadsByKind & Readonly<{ combination: Combination }>
const symbols = [
  ['dead', 'D'],
  ['live', 'L'],
  ['roofLive', 'L_r'],
  ['snow', 'S'],
  ['wind', 'W'],
] as const

/** One combination of loads, with its work shown. */
export const workedCombinedLoad = showing({
  id: 'combined-load',
  quantity: 'force',
  // A load that is not there stands in no sum.
  formula: ({ combination, ...loads }: CombinationInputs) =>
    `P = ${symbols
      .flatMap(([kind, symbol]) => {
        const factor = combination.factors[kind]
        return factor === undefined || loads[kind] === undefined ? [] : [`${Number(factor.toFixed(3))}\\,${symbol}`]
      })
      .join(' + ')}`,
  terms: { dead: ['D', 'force'], live: ['L', 'force'], roofLive: ['L_r', 'force'], snow: ['S', 'force'], wind: ['W', 'force'] },
  sources: ['asce-7-16-2'],
  of: ({ combination, ...loads }: CombinationInputs) => combinedLoad(combination.factors, loads),
})
