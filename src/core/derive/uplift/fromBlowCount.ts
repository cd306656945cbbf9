import { betaByDepth, betaCapDepth, workedBetaByDepth } from '../../engineering/soil/betaByDepth.ts'
import { atmosphere, betaRational } from '../../engineering/soil/betaRational.ts'
import type { Counting } from '../../model/kind.ts'
import type { Check } from '../../model/worked.ts'
import { metres, radians } from '../../units/quantity.ts'
import { makeCheck } from '../check.ts'
import { betaFriction } from './betaFriction.ts'
import { frictionPlusWeight } from './combine.ts'
import type { SoilContext } from './soilContext.ts'
import { soilsBetween } from './soilColumn.ts'

const group = 'uplift-soil'

/** Counted only by an engineer who has the boring that the blow count comes from. */
const needsBoring = (why: string): Counting => ({ counted: "engineer's judgement", why, sources: ['ibc-1810-3-3-1-5'] })

/** Weight with friction by the rational beta from a blow count; null without one. */
export function rational({ frame, column, length, weight, factored, counting }: SoilContext): Check | null {
  const { blows } = frame.spec.site
  if (!length || blows === null || counting.counted === 'not counted') return null
  const passed = soilsBetween(column, length)
  if (passed.some((values) => values.frictionAngle === null)) return null
  const { ultimate, allowable } = betaFriction(column, length, {
    id: 'side-friction-rational',
    beta: (depth) => {
      const frictionAngle = column.at(depth).frictionAngle ?? radians(0)
      return betaRational({ frictionAngle, blows, stress: column.stress(depth), exponent: 0.6, atmosphere: atmosphere.value }).beta
    },
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

/** Weight with friction by the beta of depth that older shaft design uses; null without a blow count. */
export function byDepth({ frame, column, length, weight, factored, counting }: SoilContext): Check | null {
  const { blows } = frame.spec.site
  if (!length || blows === null || counting.counted === 'not counted') return null
  const middle = workedBetaByDepth({ depth: metres((length.from + length.to) / 2), blows })
  const { ultimate, allowable } = betaFriction(column, length, {
    id: 'side-friction-by-depth',
    beta: (depth) => betaByDepth({ depth: metres(depth), blows }),
    standings: [middle.standing],
    sources: ['oneill-reese-1999'],
    breaks: [betaCapDepth],
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
