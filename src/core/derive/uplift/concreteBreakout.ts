import {
  allowableFromNominal,
  roundPierBreakout,
  workedAllowableFromNominal,
  workedRoundPierBreakout,
} from '../../engineering/concrete/breakout.ts'
import { wallRadius } from '../../geometry/holeProfile.ts'
import { bracketKind } from '../../kinds/index.ts'
import type { Counting } from '../../model/kind.ts'
import type { Check } from '../../model/worked.ts'
import { metres, newtons } from '../../units/quantity.ts'
import { makeCheck } from '../check.ts'
import { countingOf } from '../counting.ts'
import type { PierFrame } from '../pierFrame.ts'
import { liftAt, mixBetween } from '../placedZones.ts'
import { ratedByUser, ratingOf, workedRating } from './bracketRating.ts'
import { allowableShare } from './concreteLevel.ts'
import { type Hold, hold } from './hold.ts'

const id = 'concrete-breakout'
const group = 'uplift-concrete'
const share = { reduction: 0.7, share: allowableShare }

const screening: Counting = { counted: "engineer's judgement", why: 'breakout-screening', sources: [] }
const anchored: Counting = { counted: 'not counted', why: 'anchors-need-evaluation', sources: ['aci-318-19-17-6-2'] }

/** What goes into breakout from the top of the mix, and how it counts; null where no mix stands over the plane. */
function breakoutProblem(frame: PierFrame, plane: number) {
  const { spec, end, profile, innerRadius } = frame
  const host = frame.lifts.find((lift) => lift.id === liftAt(frame, plane - 1e-9))
  const top = host ? (mixBetween(frame, innerRadius)?.top ?? 0) : 0
  if (end.kind === 'top' && top <= plane) return null
  const isAnchored = spec.support.kind === 'bracket' && bracketKind(spec.support.bracket.kind).anchorage === 'anchored after curing'
  const { strength } = countingOf(spec)
  const rating = ratingOf(spec)
  return {
    host,
    rating,
    counting: rating !== null ? ratedByUser : isAnchored ? anchored : strength.counted === 'not counted' ? strength : screening,
    inputs: { diameter: metres(2 * wallRadius(profile, plane)), strength: spec.concrete.strength, embedment: metres(top - plane) },
  }
}

/** The cone that a pull could lift out of the top of the mix, or what a rated bracket is rated for. */
export function concreteBreakout(frame: PierFrame, plane: number): Check | null {
  const problem = breakoutProblem(frame, plane)
  if (!problem) return null
  const nominal = workedRoundPierBreakout(problem.inputs)
  const allowable = workedAllowableFromNominal(
    { nominal: newtons(nominal.value), ...share },
    { id: 'breakout-allowable', sources: nominal.sources },
  )
  const { rating, host, counting } = problem
  return makeCheck({
    id,
    group,
    where: host ? [host.id] : [],
    worked: rating === null ? [nominal] : [nominal, allowable],
    allowable: rating === null ? allowable : workedRating(rating),
    counting,
  })
}

/** The same as a bare number. */
export function concreteBreakoutHold(frame: PierFrame, plane: number): Hold | null {
  const problem = breakoutProblem(frame, plane)
  if (!problem) return null
  const { rating, counting, inputs } = problem
  const value = rating ?? allowableFromNominal({ nominal: roundPierBreakout(inputs).nominal, ...share })
  return hold(id, group, counting.counted, value)
}
