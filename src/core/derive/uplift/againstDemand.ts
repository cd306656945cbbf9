import type { PierResult } from '../../model/result.ts'
import type { Check, Worked } from '../../model/worked.ts'
import { ratioOf } from '../check.ts'

const links: ReadonlySet<Check['group']> = new Set(['uplift-post', 'uplift-connection', 'uplift-concrete'])

/**
 * Holds every link of the chain against the uplift: those between post and ground, and the one soil mechanism in use. A link that
 * is asked for something else keeps that. No link has a ratio unless every one that is needed may be counted: a chain with a link that
 * nobody can verify has nothing to be held against.
 */
export function againstDemand(checks: readonly Check[], { soil, allowable }: PierResult['uplift'], uplift: Worked | null): Check[] {
  return checks.map((check) => {
    const isLink = links.has(check.group) || check.id === soil
    if (!isLink) return check
    const { ratio: _, ...bare } = check
    const demand = check.demand ?? uplift
    if (!demand) return bare
    const stated = check.allowable?.value ?? 0
    return { ...bare, demand, ...(allowable !== null && stated > 0 ? { ratio: ratioOf(demand.value, stated) } : {}) }
  })
}
