import { treatmentClass } from '../../engineering/detail/treatmentClass.ts'
import type { Check } from '../../model/worked.ts'
import { makeCheck } from '../check.ts'
import type { PierFrame } from '../pierFrame.ts'
import { liftAt } from '../placedZones.ts'

/** Treatment of the post against the least class for where it stands, as a post that holds up a building. */
export function treatment(frame: PierFrame): Check {
  const { spec, standing, foot, lifts } = frame
  const { treatment: useClass } = spec.post
  const inConcrete = lifts.find((lift) => lift.id === liftAt(frame, foot))?.role === 'concrete'
  const contact = standing ? (inConcrete ? 'concrete-in-ground' : 'ground') : 'above-ground'
  const { least, reached, sources } = treatmentClass({ useClass, contact, buildingPost: true })
  return {
    ...makeCheck({
      id: 'treatment-class',
      group: 'detail',
      where: ['post'],
      worked: [],
      allowable: null,
      counting: { counted: 'counted', why: standing ? 'treatment-for-the-ground' : 'treatment-above-ground', sources },
    }),
    standing: standing ? 'secondary' : 'read',
    choice: { path: 'post.treatment', is: useClass, asked: least, reached },
  }
}
