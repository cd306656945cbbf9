import type { Depths } from '../../model/result.ts'
import type { Check } from '../../model/worked.ts'
import type { PierFrame } from '../pierFrame.ts'
import { barCorrosion } from './barCorrosion.ts'
import { barFit, verticalBarCover } from './barFit.ts'
import { coreChecks } from './coreCheck.ts'
import { mixStrength } from './mixStrength.ts'
import { pierSpacing } from './pierSpacing.ts'
import { postClearance } from './postClearance.ts'
import { postPlumb } from './postPlumb.ts'
import { setback } from './setback.ts'
import { treatment } from './treatment.ts'

/** Every check that is about how the pier is put together rather than about a load. */
export const detailChecks = (frame: PierFrame, depths: Depths): Check[] =>
  [
    setback(frame, depths),
    postClearance(frame),
    postPlumb(frame),
    pierSpacing(frame),
    ...barFit(frame),
    verticalBarCover(frame),
    ...mixStrength(frame),
    ...coreChecks(frame),
    treatment(frame),
    barCorrosion(frame),
  ].filter((check) => check !== null)
