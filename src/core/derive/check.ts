import type { CheckId } from '../model/saidIds.ts'
import { weakest } from '../engineering/showing.ts'
import type { SourceId } from '../engineering/sources.ts'
import type { Counting } from '../model/kind.ts'
import type { Check, Worked } from '../model/worked.ts'

type Parts = Readonly<{
  id: CheckId
  group: Check['group']
  where: readonly string[]
  worked: readonly Worked[]
  /** The allowable, had a standard let it be counted. */
  allowable: Worked | null
  counting: Counting
  demand?: Worked
}>

/** Demand over what is there; a limit that is just reached is not missed by the last bit. */
export function ratioOf(demand: number, stated: number): number {
  const ratio = demand / stated
  return Math.abs(ratio - 1) < 1e-9 ? 1 : ratio
}

/**
 * One check of a result. A link that is not counted states no allowable, whatever its worked numbers; its standing is the
 * weakest of all that went in.
 */
export function makeCheck({ id, group, where, worked, allowable, counting, demand }: Parts): Check {
  const stated = counting.counted === 'not counted' ? null : allowable
  const all = [...worked, ...(stated ? [stated] : []), ...(demand ? [demand] : [])]
  const sources = [...new Set<SourceId>([...counting.sources, ...all.flatMap((one) => one.sources)])]
  return {
    id,
    group,
    where,
    worked,
    allowable: stated,
    why: counting.why,
    counted: counting.counted,
    sources,
    standing: weakest(...all.map((one) => one.standing)),
    ...(demand ? { demand } : {}),
    ...(demand && stated && stated.value > 0 ? { ratio: ratioOf(demand.value, stated.value) } : {}),
  }
}
