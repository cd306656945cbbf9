import { weakest } from '../../engineering/showing.ts'
import type { PierResult } from '../../model/result.ts'
import type { Check } from '../../model/worked.ts'
import { newtons } from '../../units/quantity.ts'

/**
 * Which link governs. Of the ways in which the ground may hold, the smallest that may be counted is used; the chain then holds as
 * much as its least link. When a needed link is not counted the chain has no capacity: it can't be verified.
 */
export function governingUplift(checks: readonly Check[]): PierResult['uplift'] {
  const soil = checks.filter((check) => check.group === 'uplift-soil' && check.counted !== 'upper bound')
  const usable = soil.filter((check) => check.allowable !== null)
  const least = smallest(usable) ?? soil[0]
  const links = [...(least ? [least] : []), ...checks.filter((check) => chainGroups.has(check.group))]
  const uncounted = links.filter((check) => check.allowable === null).map((check) => check.id)
  const governing = uncounted.length === 0 ? smallest(links) : undefined
  return {
    soil: least?.id ?? '',
    governing: governing?.id ?? null,
    allowable: governing?.allowable ? newtons(governing.allowable.value) : null,
    standing: weakest(...links.map((check) => check.standing)),
    uncounted,
  }
}

const chainGroups: ReadonlySet<Check['group']> = new Set(['uplift-post', 'uplift-connection', 'uplift-concrete'])

function smallest(checks: readonly Check[]): Check | undefined {
  return checks.reduce<Check | undefined>(
    (best, check) =>
      (check.allowable?.value ?? Number.POSITIVE_INFINITY) < (best?.allowable?.value ?? Number.POSITIVE_INFINITY) ? check : best,
    undefined,
  )
}
