import { workedAllowableFromNominal, workedRoundPierBreakout } from '../../engineering/concrete/breakout.ts'
import { wallRadius } from '../../geometry/holeProfile.ts'
import { bracketKind } from '../../kinds/index.ts'
import type { Counting } from '../../model/kind.ts'
import { metres, newtons } from '../../units/quantity.ts'
import { countingOf, inRangeOfCode } from '../counting.ts'
import type { PierFrame } from '../pierFrame.ts'
import { liftAt, mixBetween } from '../placedZones.ts'
import { ratedByUser, ratingOf, workedRating } from './bracketRating.ts'
import { type ChainLink, chainLink } from './chainLink.ts'
import { allowableShare } from './concreteLevel.ts'

const screening: Counting = { counted: "engineer's judgement", why: 'breakout-screening', sources: [] }
const anchored: Counting = { counted: 'not counted', why: 'anchors-need-evaluation', sources: ['aci-318-19-17-6-2'] }

/** The cone that a pull could lift out of the top of the mix, or what a rated bracket is rated for; null where no mix stands over the plane. */
export function breakoutLink(frame: PierFrame, plane: number): ChainLink | null {
  const { spec, end, profile, innerRadius } = frame
  const host = frame.lifts.find((lift) => lift.id === liftAt(frame, plane - 1e-9))
  const top = host ? (mixBetween(frame, innerRadius)?.top ?? 0) : 0
  if (end.kind === 'top' && top <= plane) return null
  const isAnchored = spec.support.kind === 'bracket' && bracketKind(spec.support.bracket.kind).anchorage === 'anchored after curing'
  const { strength } = countingOf(spec)
  const rating = ratingOf(spec)
  const nominal = workedRoundPierBreakout({
    diameter: metres(2 * wallRadius(profile, plane)),
    strength: spec.concrete.strength,
    embedment: metres(top - plane),
  })
  const own = workedAllowableFromNominal(
    { nominal: newtons(nominal.value), reduction: 0.7, share: allowableShare },
    { id: 'breakout-allowable', sources: [nominal] },
  )
  return chainLink({
    id: 'concrete-breakout',
    group: 'uplift-concrete',
    counting:
      rating !== null
        ? ratedByUser
        : isAnchored
          ? anchored
          : strength.counted === 'not counted'
            ? strength
            : inRangeOfCode(spec, screening),
    allowable: rating === null ? own : workedRating(rating),
    show: () => ({ where: host ? [host.id] : [], worked: rating === null ? [nominal] : [nominal, own] }),
  })
}
