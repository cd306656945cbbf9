import { chainGroups, type Fact, type FactGroup, type FactValue, otherGroups } from '../../model/fact.ts'
import type { PierResult } from '../../model/result.ts'
import type { Check, Worked } from '../../model/worked.ts'
import { pullPasses } from '../uplift/governing.ts'
import { fact, figureOf } from './fact.ts'
import { checkVerdict, countingVerdict } from './verdict.ts'

/** The whole load path: what holds the pier down, what it is asked for, and the link that governs, or those that nobody can verify. */
export function upliftFact({ uplift, demand }: PierResult): Fact {
  const { allowable, governing, ratio, standing, uncounted } = uplift
  const held = ratio === null ? null : ratio <= 1 ? 'meets' : 'falls short'
  return fact({
    id: 'uplift',
    group: 'uplift',
    value: allowable === null ? null : { as: 'number', value: allowable, quantity: 'force' },
    limit: figureOf(demand.uplift),
    isEstimate: demand.isEstimate,
    ratio,
    standing,
    verdict: allowable === null ? "can't be verified" : held,
    restsOn: governing === null ? uncounted : [governing],
    work: { steps: [], value: null, limit: demand.uplift },
  })
}

const ofCheck = (check: Check) => ({
  id: check.id,
  counted: check.counted,
  standing: check.standing,
  reason: check.why ?? null,
  sources: check.sources,
  drawn: check.where,
  work: { steps: check.worked, value: check.allowable, limit: check.demand ?? null },
})

/** Every link of the load path, group by group, each as it counts and, where the path has a number, against what pulls on it. */
export const linkFacts = (result: PierResult): Fact[] => inGroups(result.checks, chainGroups).map((check) => linkFact(check, result))

function linkFact(check: Check, { uplift, demand }: PierResult): Fact {
  const isSpare = (check.group === 'uplift-soil' && check.id !== uplift.soil) || !pullPasses(check.id, uplift.soil)
  const place = check.counted === 'upper bound' ? 'bound' : isSpare ? 'spare' : 'needed'
  const holds = heldBy(check)
  const limit = place === 'needed' ? (check.demand ?? null) : null
  // A path without a number has links that hold too little all the same.
  const isHeld = place === 'needed' && demand.uplift !== null && holds !== null
  return fact({
    ...ofCheck(check),
    group: check.group,
    value: figureOf(holds),
    limit: figureOf(limit),
    isEstimate: demand.isEstimate,
    ratio: limit && holds && holds.value > 0 ? (check.ratio ?? limit.value / holds.value) : null,
    verdict: isHeld && demand.uplift.value > holds.value ? 'falls short' : countingVerdict(check.counted),
    link: { place, governs: check.id === uplift.governing },
  })
}

/** What a link holds; of a bound: no more than this. */
const heldBy = (check: Check): Worked | null =>
  check.counted === 'upper bound' ? (check.worked.filter((one) => one.quantity === 'force').at(-1) ?? null) : check.allowable

/** Groups that hold a load against the pier, which may be an estimate. */
const ofLoads: ReadonlySet<FactGroup> = new Set<FactGroup>(['bearing', 'lateral'])

/** Checks that are not about uplift, group by group; those of a stand-off last, in a group of their own. */
export function otherFacts({ checks, exposure, demand }: PierResult): Fact[] {
  const standOff = exposure.standOff?.checks ?? []
  const otherFact = (check: Check, group: FactGroup): Fact => {
    const side = (which: 'asked' | 'is', worked: Worked | null | undefined): FactValue | null =>
      check.choice ? { as: 'choice', path: check.choice.path, choice: check.choice[which] } : figureOf(worked)
    return fact({
      ...ofCheck(check),
      group,
      value: side('is', check.allowable),
      limit: side('asked', check.demand),
      isEstimate: demand.isEstimate && check.demand !== undefined && ofLoads.has(group),
      ratio: check.ratio ?? null,
      verdict: checkVerdict(check),
    })
  }
  return [
    ...inGroups(checks, otherGroups)
      .filter((check) => !standOff.includes(check))
      .map((check) => otherFact(check, check.group)),
    ...standOff.map((check) => otherFact(check, 'stand-off')),
  ]
}

const inGroups = (checks: readonly Check[], groups: readonly Check['group'][]): Check[] =>
  groups.flatMap((group) => checks.filter((check) => check.group === group))
