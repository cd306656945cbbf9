import type { Zone } from '../../model/zone.ts'
import { given } from '../given.ts'
import type { PierFrame } from '../pierFrame.ts'
import { pierZones } from '../pierZones.ts'
import { type Properties, tableProperties } from '../properties.ts'
import { barShearLink } from './barShearLink.ts'
import { barThroughPost } from './barThroughPost.ts'
import { blockOfPiers } from './blockOfPiers.ts'
import { bracketBolts } from './bracketBolts.ts'
import { bracketLegs } from './bracketLegs.ts'
import { breakoutLink } from './breakoutLink.ts'
import type { ChainLink } from './chainLink.ts'
import { clayAdhesion } from './clayAdhesion.ts'
import { partingLevel, pullLevel } from './concreteLevel.ts'
import { bellNeck, concreteTension } from './concreteTension.ts'
import { byUser, lowerBound } from './frictionAndWeight.ts'
import { byDepth, rational } from './fromBlowCount.ts'
import { breakoutOfLedge, coneOverLedge } from './overLedge.ts'
import { hangingWeight } from './pierWeight.ts'
import { upliftByPost } from './post.ts'
import { type SoilContext, soilContext } from './soilContext.ts'

const there = (links: readonly (ChainLink | null)[]): ChainLink[] => links.filter((link) => link !== null)

/** The links between post and concrete: bars through the post; or the bolts of a bracket, and its legs in the concrete. */
export const upliftByConnection = (frame: PierFrame, properties: Properties = tableProperties(frame.spec)): ChainLink[] =>
  there(frame.spec.support.kind === 'bracket' ? [bracketBolts(frame, properties), bracketLegs(frame)] : [barThroughPost(frame, properties)])

/** What the mix has to carry: a cone out of its top, and the pull through the plane under the connection. Empty where no mix could part. */
function upliftByConcrete(frame: PierFrame, zones: () => readonly Zone[]): ChainLink[] {
  const pull = pullLevel(frame)
  const part = partingLevel(frame, pull)
  return there([
    pull === null ? null : breakoutLink(frame, pull),
    part === null ? null : concreteTension(frame, part, zones),
    pull === null ? null : bellNeck(frame, pull, zones),
  ])
}

/**
 * Every link of the load path from the post down to the concrete; the ground's ways to hold follow them.
 * @param zones of the pier, asked for only when work is shown
 */
export const linksToConcrete = (frame: PierFrame, zones: () => readonly Zone[], properties?: Properties): ChainLink[] => [
  ...upliftByPost(frame),
  ...upliftByConnection(frame, properties),
  ...there([barShearLink(frame)]),
  ...upliftByConcrete(frame, zones),
]

/** Every way in which the ground may hold the pier down, each on its own: never two that use the same soil. */
const mechanisms = [lowerBound, rational, byDepth, clayAdhesion, byUser, coneOverLedge, breakoutOfLedge, blockOfPiers]

export const upliftBySoil = (context: SoilContext): ChainLink[] => there(mechanisms.map((mechanism) => mechanism(context)))

/** Every link of a pier for a study that asks thousands of times: the weight is that of what hangs on the post, and no zone is made. */
export function studyLinks(frame: PierFrame, properties: Properties): ChainLink[] {
  const weight = given('pier-weight', hangingWeight(frame, properties), 'weight')
  return [...linksToConcrete(frame, () => pierZones(frame), properties), ...upliftBySoil(soilContext(frame, weight, properties))]
}
