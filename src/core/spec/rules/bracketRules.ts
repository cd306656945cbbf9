import { cover } from '../../engineering/tables/concrete.ts'
import { bracketKind } from '../../kinds/index.ts'
import type { ConvexSolid } from '../../geometry/placed.ts'
import type { PierSpec } from '../../model/spec.ts'
import { type Dimensions, leastLeft } from '../dimensions.ts'
import { exceeds, error, lengths, type Rule, warning, when } from './rule.ts'

function highest(solid: ConvexSolid): number {
  if (solid.kind === 'box') return solid.centre[1] + solid.half[1]
  if (solid.kind === 'rod') return Math.max(solid.from[1], solid.to[1]) + solid.radius
  return Math.max(...solid.from.map((p) => p[1]), ...solid.to.map((p) => p[1]))
}

/** Highest point of the steel that holds the post [m], signed; the post must reach beyond it. Nothing without a bracket. */
export function steelTop({ support }: PierSpec, d: Dimensions): number {
  if (support.kind !== 'bracket' || d.bracketSite === null) return Number.NEGATIVE_INFINITY
  const parts = bracketKind(support.bracket.kind).parts(support.bracket, d.bracketSite)
  return Math.max(...parts.flatMap((part) => part.solids.map(highest)), d.foot)
}

/** The steel must land on the pier and end inside the concrete. */
export const bracketRules: Rule = (spec, d) => {
  if (spec.support.kind !== 'bracket' || d.bracketSite === null) return []
  const { bracket } = spec.support
  const concrete = d.bracketSite.landing - d.baseTop
  const deepest = concrete - bracket.plateThickness - leastLeft
  const covered = concrete - bracket.plateThickness - cover.castAgainstEarth.value
  return [
    ...when(exceeds(d.inner, d.radius), () => error('bracket-wider-than-pier', 'support.bracket.kind', lengths(d.inner, d.radius))),
    ...when(exceeds(bracket.embedment, deepest), () =>
      error('bracket-too-deep', 'support.bracket.embedment', lengths(bracket.embedment, deepest)),
    ),
    ...when(!exceeds(bracket.embedment, deepest) && exceeds(bracket.embedment, covered), () =>
      warning('bracket-cover', 'support.bracket.embedment', lengths(bracket.embedment, covered, ['aci-318-19-20-5-1-3'])),
    ),
  ]
}
