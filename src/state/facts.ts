import { report } from '../core/derive/report/report.ts'
import type { Fact } from '../core/model/fact.ts'
import type { PierResult } from '../core/model/result.ts'

const known = new WeakMap<PierResult, readonly Fact[]>()

/** Everything that is said of a pier, once for a result: the same result gives the same list. */
export function factsAbout(result: PierResult): readonly Fact[] {
  const facts = known.get(result) ?? report(result)
  known.set(result, facts)
  return facts
}
