import { workedLeanOffset, workedPlumbAllowance } from '../../engineering/detail/leaning.ts'
import { pierPlumb } from '../../engineering/tables/pierTolerances.ts'
import type { Check } from '../../model/worked.ts'
import { metres } from '../../units/quantity.ts'
import { makeCheck } from '../check.ts'
import type { PierFrame } from '../pierFrame.ts'

/** How far a leaning post is out of line between its foot and grade, beside what drilled piers may be; null for a plumb one. */
export function postPlumb({ spec, leaning, foot }: PierFrame): Check | null {
  if (!leaning) return null
  const length = metres(-foot)
  const pier = spec.verticalBars ? 'reinforced' : 'plainHeldByGround'
  return makeCheck({
    id: 'post-plumb',
    group: 'detail',
    where: ['post'],
    worked: [],
    allowable: workedPlumbAllowance({ pier, length, perLength: pierPlumb[pier].value }),
    demand: workedLeanOffset({ length, lean: spec.post.lean }),
    counting: { counted: "engineer's judgement", why: 'plumb-of-drilled-piers', sources: ['aci-117m-10', 'aci-336-1-scope'] },
  })
}
