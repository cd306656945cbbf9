import { castRoles } from '../../model/solid.ts'
import { workedLeastPostSpacing } from '../../engineering/soil/postSpacing.ts'
import { postSections } from '../../engineering/tables/postSections.ts'
import type { Check } from '../../model/worked.ts'
import { metres } from '../../units/quantity.ts'
import { makeCheck } from '../check.ts'
import { given } from '../given.ts'
import type { PierFrame } from '../pierFrame.ts'

/** Distance to the nearest pier, against that below which piers share their soil; null for a pier that stands alone. */
export function pierSpacing({ spec, lifts }: PierFrame): Check | null {
  if (spec.spacing === null) return null
  const { width, depth } = postSections[spec.post.section]
  const isCast = spec.hole.base?.material === 'concrete' || lifts.some((lift) => castRoles.has(lift.role))
  const footing = isCast ? Math.max(spec.hole.diameter, spec.hole.bell?.diameter ?? 0) : 0
  return makeCheck({
    id: 'pier-spacing',
    group: 'detail',
    where: lifts.filter((lift) => castRoles.has(lift.role)).map((lift) => lift.id),
    worked: [],
    allowable: given('spacing-there', spec.spacing, 'length'),
    demand: workedLeastPostSpacing({ post: metres(Math.max(width, depth)), footing: metres(footing) }),
    counting: { counted: 'counted', why: 'neighbours-share-soil', sources: ['ep486-scope'] },
  })
}
