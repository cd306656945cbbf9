import type { CheckId } from '../../model/saidIds.ts'
import type { Counting } from '../../model/kind.ts'
import type { Check, Worked } from '../../model/worked.ts'
import { makeCheck } from '../check.ts'

/** One link of the load path: what it holds, and the rest of its check on demand. A study that asks thousands of times never does. */
export type ChainLink = Readonly<{
  id: CheckId
  group: Check['group']
  counting: Counting
  /** Null where nothing may be counted. */
  allowable: Worked | null
  /** Is it a way in which the ground over a bell comes up with it? */
  overBell?: boolean
  show: () => Pick<Check, 'where' | 'worked'>
}>

/** A link as its counting lets it be stated: nothing where it is not counted, whatever the number. */
export const chainLink = (link: ChainLink): ChainLink => (link.counting.counted === 'not counted' ? { ...link, allowable: null } : link)

export const checkOf = ({ show, overBell: _, ...link }: ChainLink): Check => makeCheck({ ...link, ...show() })
