import { cover } from '../../engineering/tables/concrete.ts'
import { bracketKind } from '../../kinds/index.ts'
import type { ConvexSolid } from '../../geometry/placed.ts'
import { exceeds, error, fallsShort, leastLeft, lengths, type Rule, warning, when } from './rule.ts'

const highest = (solid: ConvexSolid) =>
  solid.kind === 'box' ? solid.centre[1] + solid.half[1] : Math.max(solid.from[1], solid.to[1]) + solid.radius

/** The steel must land on the pier, end inside the concrete, and hold a post that is long enough for it. */
export const bracketRules: Rule = (spec, d) => {
  if (spec.support.kind !== 'bracket' || d.bracketSite === null) return []
  const { bracket } = spec.support
  const concrete = d.bracketSite.landing - d.baseTop
  const deepest = concrete - bracket.plateThickness - leastLeft
  const covered = concrete - bracket.plateThickness - cover.castAgainstEarth.value
  const steel = bracketKind(bracket.kind)
    .parts(bracket, d.bracketSite)
    .flatMap((part) => part.solids.map(highest))
  const least = Math.max(...steel, d.foot) + leastLeft
  return [
    ...when(exceeds(d.inner, d.radius), () => error('bracket-wider-than-pier', 'support.bracket.kind', lengths(d.inner, d.radius))),
    ...when(exceeds(bracket.embedment, deepest), () =>
      error('bracket-too-deep', 'support.bracket.embedment', lengths(bracket.embedment, deepest)),
    ),
    ...when(!exceeds(bracket.embedment, deepest) && exceeds(bracket.embedment, covered), () =>
      warning('bracket-cover', 'support.bracket.embedment', lengths(bracket.embedment, covered, ['aci-318-19-20-5-1-3'])),
    ),
    ...when(fallsShort(spec.post.heightAboveGrade, least), () =>
      error('post-too-short', 'post.heightAboveGrade', lengths(spec.post.heightAboveGrade, least)),
    ),
  ]
}
