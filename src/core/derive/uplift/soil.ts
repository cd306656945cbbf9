import { blockOfPiers } from './blockOfPiers.ts'
import type { ChainLink } from './chainLink.ts'
import { clayAdhesion } from './clayAdhesion.ts'
import { byUser, lowerBound } from './frictionAndWeight.ts'
import { byDepth, rational } from './fromBlowCount.ts'
import { breakoutOfLedge, coneOverLedge } from './overLedge.ts'
import type { SoilContext } from './soilContext.ts'

/** Every way in which the ground may hold the pier down, each on its own: never two that use the same soil. */
const mechanisms = [lowerBound, rational, byDepth, clayAdhesion, byUser, coneOverLedge, breakoutOfLedge, blockOfPiers]

export const upliftBySoil = (context: SoilContext): ChainLink[] =>
  mechanisms.map((mechanism) => mechanism(context)).filter((link) => link !== null)
