import { useClasses } from '../../engineering/tables/useClasses.ts'
import { type LeaningPost, leaningPost, reachAt } from '../../geometry/leaningPost.ts'
import type { PierSpec } from '../../model/spec.ts'
import { toSI } from '../../units/factors.ts'
import { leastLeft, type Dimensions } from '../dimensions.ts'
import { placesMix } from '../placement.ts'
import { steelTop } from './bracketRules.ts'
import { exceeds, error, fallsShort, lengths, type Rule, warning, when } from './rule.ts'

/** Room that concrete needs round a post: hole less the post's diameter or diagonal. Source: ibc-1807-3-3. */
const clearance = toSI(4, 'in')
/** Least use class of a post that is set in the ground. Source: ibc-1807-3-1. */
const forGround = 'UC4B'

const embedded = (spec: PierSpec, d: Dimensions) => {
  if (spec.support.kind !== 'embedded') return []
  const { foot } = spec.support
  const lowest = (spec.hole.base?.thickness ?? 0) + ('pad' in spec.fill ? spec.fill.pad : 0)
  const highest = d.gradeAt(d.post.radius) - d.bottom - leastLeft
  const room = spec.hole.diameter - d.post.across
  const { treatment, lean } = spec.post
  const mostLean = d.leaning === null || exceeds(-room, 0) ? lean : greatestLean(d, d.leaning)
  return [
    ...when(!exceeds(room, 0), () => error('post-wider-than-hole', 'post.section', lengths(d.post.across, spec.hole.diameter))),
    ...when(placesMix(spec) && exceeds(room, 0) && fallsShort(room, clearance), () =>
      warning('post-clearance', 'hole.diameter', lengths(room, clearance, ['ibc-1807-3-3'])),
    ),
    ...when(mostLean < lean, () => error('post-leans-into-wall', 'post.lean', { got: lean, limit: mostLean, quantity: 'angle' })),
    ...when(fallsShort(foot, lowest), () => error('foot-below-base', 'support.foot', lengths(foot, lowest))),
    ...when(exceeds(foot, highest), () => error('foot-above-grade', 'support.foot', lengths(foot, highest))),
    ...when(useClasses[treatment].rank < useClasses[forGround].rank, () =>
      warning('post-not-treated-for-ground', 'post.treatment', { got: treatment, limit: forGround, sources: ['ibc-1807-3-1', 'awpa-u1'] }),
    ),
  ]
}

/** Levels at which a leaning post comes nearest to the wall [m]: where the shaft ends, where a wide mouth ends, and at a rim. */
const nearestToWall = ({ profile, gradeAt, radius, top }: Dimensions): number[] => [
  ...profile.wall.slice(0, -1).map(({ y }) => y.a),
  gradeAt(radius),
  0,
  ...(top === null ? [] : [top.rim]),
]

/** The lean with which the post still stands inside the hole all the way up, no more than the one it has [rad]; found by halving. */
function greatestLean(d: Dimensions, post: LeaningPost): number {
  const fits = (lean: number) => {
    const tried = leaningPost(post.outline, d.foot, post.length, lean, post.toward)
    return nearestToWall(d).every((y) => y < d.foot || !exceeds(reachAt(tried, y), d.wallAt(y)))
  }
  if (fits(post.lean)) return post.lean
  let [low, high] = [0, post.lean]
  for (let step = 0; step < 40; step++) {
    const middle = (low + high) / 2
    if (fits(middle)) low = middle
    else high = middle
  }
  return low
}

/** The post must come out of what is round it: top or uphill grade, heaped soil, or the steel that holds it. */
const height = (spec: PierSpec, d: Dimensions) => {
  const { heightAboveGrade } = spec.post
  const ground = Math.max(-d.gradeAt(d.post.radius), d.top?.inner ?? 0, d.top?.rim ?? 0)
  const heaped = d.top === null ? 0 : spec.top.heaped
  const covered = Math.max(ground + heaped, steelTop(spec, d))
  const reached = covered + leastLeft
  // A post that leans has to be longer to reach as high.
  const least = d.leaning === null ? reached : d.foot + (reached - d.foot) / Math.cos(d.leaning.lean)
  return when(fallsShort(heightAboveGrade, least), () => error('post-too-short', 'post.heightAboveGrade', lengths(heightAboveGrade, least)))
}

export const postRules: Rule = (spec, d) => [...embedded(spec, d), ...height(spec, d)]
