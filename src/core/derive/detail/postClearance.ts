import { workedLeastHoleForConcrete } from '../../engineering/soil/lateralWidth.ts'
import { postSections } from '../../engineering/tables/postSections.ts'
import { wallRadius } from '../../geometry/holeProfile.ts'
import { type LeaningPost, shiftAt } from '../../geometry/leaningPost.ts'
import type { Check, Worked } from '../../model/worked.ts'
import { makeCheck } from '../check.ts'
import { given, lengthTerm } from '../given.ts'
import type { PierFrame } from '../pierFrame.ts'
import { liftAt } from '../placedZones.ts'

/** A post that leans has least room at grade, where it has come over to one side. */
function leftBeside(post: LeaningPost, shaft: number, grade: number): Worked {
  const over = shiftAt(post, grade)
  return given('hole-beside-leaning-post', 2 * (shaft - over), 'length', {
    formula: 'b = D - 2x',
    inputs: [lengthTerm('D', 'diameter', 2 * shaft), lengthTerm('x', 'leaning', over)],
  })
}

/** Room for concrete round an embedded post, at its foot; null where no mixed concrete stands round it. */
export function postClearance(frame: PierFrame): Check | null {
  const { spec, standing, leaning, foot, lifts, profile } = frame
  const host = lifts.find((lift) => lift.id === liftAt(frame, foot))
  if (!standing || host?.role !== 'concrete') return null
  const { shape, width, depth } = postSections[spec.post.section]
  return makeCheck({
    id: 'post-clearance',
    group: 'detail',
    where: ['post', host.id],
    worked: [],
    allowable: leaning
      ? leftBeside(leaning, profile.shaftRadius, frame.grade.a)
      : given('hole-at-foot', 2 * wallRadius(profile, foot), 'length', { formula: 'D' }),
    demand: workedLeastHoleForConcrete({ width, depth, round: shape === 'round' }),
    counting: { counted: 'counted', why: 'room-for-concrete', sources: ['ibc-1807-3-3'] },
  })
}
