import { chainGroups, type Fact, otherGroups, type VerdictMark } from '../../model/fact.ts'
import { drawingOf } from './drawingFacts.ts'
import { factsOf } from './report.ts'
import { markOf } from './verdict.ts'

/** How a check may stand, worst first: what nobody can verify comes before what meets. */
export const stands = ['short', 'unverified', 'meets', 'unneeded'] as const satisfies readonly VerdictMark[]
export type Stand = (typeof stands)[number]
/** What is told of one check in a line: what it is, and the links that it comes from. */
export type ToldCheck = Pick<Fact, 'id' | 'group' | 'restsOn'>
export type Status = Readonly<Record<Stand, readonly ToldCheck[]>>

/** Asked for by a load, and else not. */
const ofLoads: ReadonlySet<Fact['group']> = new Set<Fact['group']>(['uplift', 'bearing', 'lateral'])
const noDrawing: ToldCheck = { id: 'drawing', group: 'drawing', restsOn: [] }

/**
 * How all checks of a pier stand, each once: the load path as one, with links of their own that fall short where the path has no number;
 * every other check; the drawing as one. `unneeded` holds what was not asked: no load is known, no drawing is entered. Conditions and numbers
 * that are held against nothing (frost jacking) are no checks. It says what meets its figure, never that a pier may be built.
 * Checked by: tests/core/derive/status.test.ts
 */
export function statusOf(facts: readonly Fact[]): Status {
  const [uplift] = factsOf(facts, 'uplift')
  const drawing = drawingOf(facts)
  const links =
    uplift?.verdict === "can't be verified" ? factsOf(facts, ...chainGroups).filter(({ verdict }) => verdict === 'falls short') : []
  const checks = [...links, ...factsOf(facts, 'uplift', ...otherGroups, 'stand-off'), ...(drawing ? [drawing] : [])]
  const at = (stand: Stand): readonly ToldCheck[] => checks.filter((one) => standOf(one) === stand)
  return {
    short: at('short'),
    unverified: at('unverified'),
    meets: at('meets'),
    unneeded: [...at('unneeded'), ...(drawing ? [] : [noDrawing])],
  }
}

/** Null for what is no check. */
function standOf({ verdict, group, limit }: Fact): Stand | null {
  const mark = markOf(verdict)
  if (mark === 'short' || mark === 'unverified') return mark
  if (mark === 'meets') return verdict === 'condition met' ? null : 'meets'
  return ofLoads.has(group) && limit === null ? 'unneeded' : null
}
