import { betaByDepth, betaCapDepth, workedBetaByDepth } from '../../engineering/soil/betaByDepth.ts'
import { atmosphere, betaRational } from '../../engineering/soil/betaRational.ts'
import type { Counting } from '../../model/kind.ts'
import type { Check } from '../../model/worked.ts'
import { metres, radians } from '../../units/quantity.ts'
import { makeCheck } from '../check.ts'
import { allowableFriction, betaFriction } from './betaFriction.ts'
import { frictionPlusWeight } from './combine.ts'
import { factoredWeight } from './frictionAndWeight.ts'
import { type Hold, hold } from './hold.ts'
import type { SoilContext, SoilFigures, SoilSite } from './soilContext.ts'

const group = 'uplift-soil'

/** Counted only by an engineer who has the boring that the blow count comes from. */
const needsBoring = (why: string): Counting => ({ counted: "engineer's judgement", why, sources: ['ibc-1810-3-3-1-5'] })

/** The length and the blow count that friction is worked out from; null without one of them. */
function boring({ frame, length, counting }: SoilSite) {
  const { blows } = frame.spec.site
  return !length || blows === null || counting.counted === 'not counted' ? null : { length, blows }
}

/** The beta at a depth, and the soils passed; null in rock. */
function rationalProblem(site: SoilSite) {
  const found = boring(site)
  if (!found) return null
  const { column, passed } = site
  const { length, blows } = found
  if (passed.some((values) => values.frictionAngle === null)) return null
  const beta = (depth: number) => {
    const frictionAngle = column.at(depth).frictionAngle ?? radians(0)
    return betaRational({ frictionAngle, blows, stress: column.stress(depth), exponent: 0.6, atmosphere: atmosphere.value }).beta
  }
  return { length, passed, beta }
}

/** Weight with friction by the rational beta from a blow count; null without one. */
export function rational(context: SoilContext): Check | null {
  const problem = rationalProblem(context)
  if (!problem) return null
  const { column, weight, factored } = context
  const { length, passed, beta } = problem
  const { ultimate, allowable } = betaFriction(column, length, {
    id: 'side-friction-rational',
    beta,
    standings: passed.map((values) => values.strengthStanding),
    sources: ['gec-10-2018'],
  })
  return makeCheck({
    id: 'rational-friction-and-weight',
    group,
    where: length.where,
    worked: [ultimate, allowable, weight, factored],
    allowable: frictionPlusWeight(allowable, factored),
    counting: needsBoring('friction-from-blow-count'),
  })
}

/** The same as a bare number. */
export function rationalHold(figures: SoilFigures): Hold | null {
  const problem = rationalProblem(figures)
  if (!problem) return null
  const friction = allowableFriction(figures.column, problem.length, { beta: problem.beta })
  return hold('rational-friction-and-weight', group, "engineer's judgement", friction + factoredWeight(figures.weight))
}

/** The beta of a depth alone, with the depth at which it turns. */
const depthMethod = (blows: number) => ({
  beta: (depth: number) => betaByDepth({ depth: metres(depth), blows }),
  breaks: [betaCapDepth],
})

/** Weight with friction by the beta of depth that older shaft design uses; null without a blow count. */
export function byDepth(context: SoilContext): Check | null {
  const found = boring(context)
  if (!found) return null
  const { column, weight, factored } = context
  const { length, blows } = found
  const middle = workedBetaByDepth({ depth: metres((length.from + length.to) / 2), blows })
  const { ultimate, allowable } = betaFriction(column, length, {
    id: 'side-friction-by-depth',
    ...depthMethod(blows),
    standings: [middle.standing],
    sources: ['oneill-reese-1999'],
  })
  return makeCheck({
    id: 'depth-friction-and-weight',
    group,
    where: length.where,
    worked: [middle, ultimate, allowable, weight, factored],
    allowable: frictionPlusWeight(allowable, factored),
    counting: needsBoring('friction-from-blow-count'),
  })
}

/** The same as a bare number. */
export function byDepthHold(figures: SoilFigures): Hold | null {
  const found = boring(figures)
  if (!found) return null
  const friction = allowableFriction(figures.column, found.length, depthMethod(found.blows))
  return hold('depth-friction-and-weight', group, "engineer's judgement", friction + factoredWeight(figures.weight))
}
