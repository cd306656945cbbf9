import { betaFriction, frictionPlusWeight } from './betaFriction.ts'
import { type ChainLink, chainLink } from './chainLink.ts'
import type { SoilContext } from './soilContext.ts'
import { betaByDepth, betaCapDepth, workedBetaByDepth } from '../../engineering/soil/betaByDepth.ts'
import { atmosphere, betaRational } from '../../engineering/soil/betaRational.ts'
import type { Counting } from '../../model/kind.ts'
import { metres, radians } from '../../units/quantity.ts'

/** Counted only by an engineer who has the boring that the blow count comes from. */
const counting: Counting = { counted: "engineer's judgement", why: 'friction-from-blow-count', sources: ['ibc-1810-3-3-1-5'] }
const group = 'uplift-soil'

/** The length and the blow count that friction is worked out from; null without one of them. */
function boring({ frame, length, counting: pier }: SoilContext) {
  const { blows } = frame.spec.site
  return !length || blows === null || pier.counted === 'not counted' ? null : { length, blows }
}

/** Weight with friction by the rational beta from a blow count; null without one, and in rock. */
export function rational(context: SoilContext): ChainLink | null {
  const { column, passed, weight, factored } = context
  const found = boring(context)
  if (!found || passed.some((values) => values.frictionAngle === null)) return null
  const { length, blows } = found
  const { ultimate, allowable } = betaFriction(column, length, {
    beta: (depth) => {
      const frictionAngle = column.at(depth).frictionAngle ?? radians(0)
      return betaRational({ frictionAngle, blows, stress: column.stress(depth), exponent: 0.6, atmosphere: atmosphere.value }).beta
    },
    shown: {
      id: 'side-friction-rational-ultimate',
      standings: passed.map((values) => values.strengthStanding),
      sources: ['gec-10-2018'],
    },
    allowableId: 'side-friction-rational-allowable',
  })
  return chainLink({
    id: 'rational-friction-and-weight',
    group,
    counting,
    allowable: frictionPlusWeight(allowable, factored),
    show: () => ({ where: length.where, worked: [ultimate, allowable, weight, factored] }),
  })
}

/** Weight with friction by the beta of depth that older shaft design uses; null without a blow count. */
export function byDepth(context: SoilContext): ChainLink | null {
  const { column, weight, factored } = context
  const found = boring(context)
  if (!found) return null
  const { length, blows } = found
  const middle = workedBetaByDepth({ depth: metres((length.from + length.to) / 2), blows })
  const { ultimate, allowable } = betaFriction(column, length, {
    beta: (depth) => betaByDepth({ depth: metres(depth), blows }),
    breaks: [betaCapDepth],
    shown: { id: 'side-friction-by-depth-ultimate', standings: [middle], sources: ['oneill-reese-1999'] },
    allowableId: 'side-friction-by-depth-allowable',
  })
  return chainLink({
    id: 'depth-friction-and-weight',
    group,
    counting,
    allowable: frictionPlusWeight(allowable, factored),
    show: () => ({ where: length.where, worked: [middle, ultimate, allowable, weight, factored] }),
  })
}
