import { groundlineBand } from '../../engineering/tables/decayThresholds.ts'
import { splashHeight } from '../../engineering/tables/lotDrainage.ts'
import type { Contact } from '../../model/kind.ts'
import type { PierFrame } from '../pierFrame.ts'
import { type Rises, risesOf } from './soilRise.ts'

/** What sets hard against the wood and does not follow it when it shrinks. */
const hard: readonly Contact[] = ['concrete', 'dry-mix', 'flowable-fill']
export const isHard = (contact: Contact): boolean => hard.includes(contact)

/** All that the class of a spot on the wood depends on besides where it is. */
export type FaceSite = Readonly<{
  frame: PierFrame
  rises: Rises
  /** Does the top send water down along the post? */
  fed: boolean
  /** Depth of the open joint below the top of what has set [m]; zero where it stays closed. */
  jointReach: number
  /** Depth of the zone below the top in which water, air and soil life meet [m]. */
  groundlineReach: number
  splash: number
  /** Level up to which a dished top holds water [m]; null where it holds none. */
  pondLevel: number | null
}>

/** @param frame of the pier @param fed whether the top feeds the post @param jointOpens whether drying opens a joint @param pondLevel of the water in a dish [m] */
export const faceSite = (frame: PierFrame, fed: boolean, jointOpens: boolean, pondLevel: number | null): FaceSite => ({
  frame,
  rises: risesOf(frame.spec),
  fed,
  jointReach: jointOpens ? frame.spec.water.jointReach : 0,
  groundlineReach: groundlineBand.high.value,
  splash: splashHeight[frame.spec.water.around].value,
  pondLevel,
})
