import { chainGroups, type Fact, otherGroups } from '../../model/fact.ts'
import { factsOf } from './report.ts'
import type { ToldCheck } from './status.ts'
import { markOf } from './verdict.ts'

/** Changes of a number of less than this share are none. */
const little = 0.005
/** Numbers held against nothing of which more is worse: what frost pulls, and wood in the ground. */
const moreIsWorse: ReadonlySet<string> = new Set(['frost-jacking', 'wood-below-grade'])

/** How badly a fact stands: what falls short and what nobody can verify are both worse than all else. */
const ranks = { short: 2, unverified: 1 } as const
const rankOf = ({ verdict }: Fact): number => {
  const mark = markOf(verdict)
  return mark === 'short' || mark === 'unverified' ? ranks[mark] : 0
}
const rises = (before: number | null, after: number | null): boolean => before !== null && after !== null && after > before * (1 + little)
const numberIn = ({ value }: Fact): number | null => (value?.as === 'number' ? value.value : null)

const isWorse = (before: Fact, after: Fact): boolean =>
  rankOf(after) > rankOf(before) ||
  rises(before.ratio, after.ratio) ||
  (moreIsWorse.has(after.id) && rises(numberIn(before), numberIn(after)))

/**
 * What a change made worse, whatever else it made better: a verdict that falls, more of a limit that is used, more frost that pulls, more
 * wood in the ground. Links count where the pull must pass them. Checks of the changed pier, in the order of the report.
 * Checked by: tests/core/derive/worsened.test.ts
 */
export const worsened = (before: readonly Fact[], after: readonly Fact[]): readonly ToldCheck[] =>
  factsOf(after, 'uplift', ...chainGroups, ...otherGroups, 'stand-off', 'headline')
    .filter((one) => {
      const was = before.find(({ group, id }) => group === one.group && id === one.id)
      return one.link?.place !== 'bound' && one.link?.place !== 'spare' && (was === undefined ? rankOf(one) > 0 : isWorse(was, one))
    })
    .map(({ id, group, restsOn }) => ({ id, group, restsOn }))

/** What a change made worse while the uplift that may be counted rose; nothing where it did not. */
export const costOfGain = (before: readonly Fact[], after: readonly Fact[]): readonly ToldCheck[] => {
  const [[was], [is]] = [factsOf(before, 'uplift'), factsOf(after, 'uplift')]
  return was && is && rises(numberIn(was), numberIn(is)) ? worsened(before, after) : []
}
