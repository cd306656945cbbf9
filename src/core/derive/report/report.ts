import type { Fact, FactGroup } from '../../model/fact.ts'
import type { PierResult } from '../../model/result.ts'
import { linkFacts, otherFacts, upliftFact } from './checkFacts.ts'
import { drawingFacts } from './drawingFacts.ts'
import { depthFacts, exposureFacts, headlineFacts, holeFacts, quantityFacts } from './placedFacts.ts'

/**
 * Everything that is said of a pier, each thing once, in the order in which it is told. Whoever prints it chooses groups, words and
 * layout, and judges nothing: a check that is added to a pier stands in its group here and is printed wherever that group is.
 */
export const report = (result: PierResult): readonly Fact[] => [
  upliftFact(result),
  ...headlineFacts(result),
  ...linkFacts(result),
  ...quantityFacts(result),
  ...holeFacts(result),
  ...exposureFacts(result),
  ...depthFacts(result),
  ...otherFacts(result),
  ...drawingFacts(result),
]

/** The facts of these groups, in the order of the groups. */
export const factsOf = (facts: readonly Fact[], ...groups: readonly FactGroup[]): readonly Fact[] =>
  groups.flatMap((group) => facts.filter((one) => one.group === group))

/** Lengths and areas less apart than this are one. */
const close = 1e-9

const sizes = ({ value, figures }: Fact): ReadonlyMap<string, number> =>
  new Map(
    [['', value] as const, ...figures.map((one) => [one.id, one.value] as const)].flatMap(([id, one]) =>
      one?.as === 'number' ? [[id, one.value]] : [],
    ),
  )

/** Do these say the same, as every side does on level ground? Their names aside. */
export function sayTheSame(facts: readonly Fact[]): boolean {
  const all = facts.map(sizes)
  const ids = new Set(all.flatMap((one) => [...one.keys()]))
  return [...ids].every((id) => {
    const found = all.map((one) => one.get(id) ?? 0)
    return Math.max(...found) - Math.min(...found) < close
  })
}
