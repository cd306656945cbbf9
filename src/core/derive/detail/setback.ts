import { workedDistanceToDaylight } from '../../engineering/soil/depths.ts'
import { setbackSlope, workedSetbackFromSlope } from '../../engineering/soil/setback.ts'
import type { Depths } from '../../model/result.ts'
import type { Check } from '../../model/worked.ts'
import { metres } from '../../units/quantity.ts'
import { makeCheck } from '../check.ts'
import { bearingBody } from '../depths.ts'
import type { PierFrame } from '../pierFrame.ts'

/** Level distance from the bottom of the pier to the face of a steep slope; null on slopes that the rule does not speak of. */
export function setback(frame: PierFrame, depths: Depths): Check | null {
  const { slope, slopeHeight } = frame.spec.site
  if (!(slope > setbackSlope.value)) return null
  const base = { id: 'setback-from-slope', group: 'detail', where: bearingBody(frame) } as const
  const there = workedDistanceToDaylight({ depth: metres(Math.max(0, depths.bearingAtDownhillEdge)), slope })
  if (slopeHeight === null) {
    return makeCheck({
      ...base,
      worked: there ? [there] : [],
      allowable: null,
      counting: { counted: 'not counted', why: 'slope-height-not-known', sources: ['ibc-1808-7'] },
    })
  }
  return makeCheck({
    ...base,
    worked: [],
    allowable: there,
    demand: workedSetbackFromSlope({ slopeHeight }, { id: 'setback-asked' }),
    counting: { counted: 'counted', why: 'setback-below-downhill-edge', sources: ['ibc-1808-7'] },
  })
}
