import { chainGroups, type Fact } from '../../model/fact.ts'
import { factsOf } from './report.ts'

/** The load path as it is drawn and listed, from the post down: every link by its group, those that the pull must pass first. */
export type PullPath = Readonly<{
  /** The path as one: what it holds, what is asked of it, and the link that governs or those that are not counted. */
  whole: Fact
  groups: readonly Readonly<{ group: (typeof chainGroups)[number]; links: readonly Fact[] }>[]
  /** What the path holds [N]; null where a link that is needed is not counted. */
  holds: number | null
  /** Uplift that is asked for [N]; null when none is known. Not more than nothing where dead load wins. */
  asked: number | null
}>

const numberIn = (value: Fact['value']): number | null => (value?.as === 'number' ? value.value : null)
/** What a link holds [N]; of a bound: no more than this. Null where nothing may be counted. */
export const holdsOf = ({ value }: Fact): number | null => numberIn(value)
export const isNeeded = ({ link }: Fact): boolean => link?.place === 'needed'

const places = { needed: 0, spare: 1, bound: 2 } as const
const placeOf = ({ link }: Fact): number => places[link?.place ?? 'needed']
/** Links that the pull must pass first, then ways to count the ground that are not in use, least first, then bounds. */
const byPlace = (a: Fact, b: Fact): number =>
  placeOf(a) - placeOf(b) || (a.link?.place === 'spare' ? (holdsOf(a) ?? 0) - (holdsOf(b) ?? 0) : 0)

export function pullPath(facts: readonly Fact[]): PullPath {
  const [whole] = factsOf(facts, 'uplift')
  if (!whole) throw new Error('pullPath: these facts have no load path')
  const groups = chainGroups.map((group) => ({ group, links: [...factsOf(facts, group)].sort(byPlace) }))
  return { whole, groups: groups.filter(({ links }) => links.length > 0), holds: holdsOf(whole), asked: numberIn(whole.limit) }
}

export const linksOf = ({ groups }: PullPath): readonly Fact[] => groups.flatMap(({ links }) => links)
