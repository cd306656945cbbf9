import { workedLeastHoleForConcrete } from '../../engineering/soil/lateralWidth.ts'
import { postSections } from '../../engineering/tables/postSections.ts'
import { wallRadius } from '../../geometry/holeProfile.ts'
import type { Check } from '../../model/worked.ts'
import { makeCheck } from '../check.ts'
import { given } from '../given.ts'
import type { PierFrame } from '../pierFrame.ts'
import { liftAt } from '../placedZones.ts'

/** Room for concrete round an embedded post, at its foot; null where no mixed concrete stands round it. */
export function postClearance(frame: PierFrame): Check | null {
  const { spec, standing, foot, lifts, profile } = frame
  const host = lifts.find((lift) => lift.id === liftAt(frame, foot))
  if (!standing || host?.role !== 'concrete') return null
  const { shape, width, depth } = postSections[spec.post.section]
  return makeCheck({
    id: 'post-clearance',
    group: 'detail',
    where: ['post', host.id],
    worked: [],
    allowable: given('hole-at-foot', 2 * wallRadius(profile, foot), 'length', { formula: 'D' }),
    demand: workedLeastHoleForConcrete({ width, depth, round: shape === 'round' }),
    counting: { counted: 'counted', why: 'room-for-concrete', sources: ['ibc-1807-3-3'] },
  })
}
