import type { Metres } from '../../units/quantity.ts'
import type { SourceId } from '../sources.ts'
import type { CodeEdition } from '../../model/spec.ts'
import { standOffRules } from '../tables/standOff.ts'

type Inputs = Readonly<{ edition: CodeEdition; aboveConcrete: Metres; aboveEarth: Metres; exposed: boolean }>
export type StandOffVerdict = Readonly<{
  concreteReached: boolean
  earthReached: boolean
  /** Does the whole condition for leaving the post untreated hold, as far as clearances say? */
  conditionReached: boolean
  /** The exception does not reach posts out in the weather under this edition. */
  notForWeather: boolean
  /** Earth below is to be covered by a barrier. */
  barrier: boolean
  sources: readonly SourceId[]
}>

/**
 * Clearances under which a code would let a post on a stand-off go without treatment: a condition, not a requirement.
 * @param edition code and edition chosen [1]
 * @param aboveConcrete foot of the wood above the concrete [m]
 * @param aboveEarth foot of the wood above exposed earth, at its highest beside the pier [m]
 * @param exposed true for a post out in the weather [1]
 * @returns which clearances are reached, and the whole condition [1]
 * Formula: 1 in above concrete, 6 in (IBC 2018: 8 in) above earth; either or both by edition
 * Valid: posts on piers or pedestals. Outside: an embedded post has no stand-off.
 * Source: irc-r317-1-4, irc-r317-1, ibc-2304-12
 * Checked by: tests/external/irc-r317-1-4/check.test.ts
 */
export function standOffCondition({ edition, aboveConcrete, aboveEarth, exposed }: Inputs): StandOffVerdict {
  const rule = standOffRules[edition]
  // A clearance typed as 1 in is not short of 1 in by the last bit.
  const reaches = (is: number, asked: number) => is >= asked - 1e-9
  const concreteReached = reaches(aboveConcrete, rule.aboveConcrete.value)
  const earthReached = reaches(aboveEarth, rule.aboveEarth.value)
  const notForWeather = exposed && !rule.weatherExposed
  const cleared = rule.join === 'both' ? concreteReached && earthReached : concreteReached || earthReached
  return {
    concreteReached,
    earthReached,
    conditionReached: cleared && !notForWeather,
    notForWeather,
    barrier: rule.barrier,
    sources: [rule.aboveEarth.source],
  }
}
