import { governingLoads, type LoadsByKind } from '../../engineering/loads/combine.ts'
import { workedLeewardReaction, workedTributaryLoad, workedWindwardReaction } from '../../engineering/loads/roofReactions.ts'
import type { LoadCase } from '../../model/result.ts'
import type { LoadEstimate } from '../../model/spec.ts'
import type { Worked } from '../../model/worked.ts'
import { newtons, pascals } from '../../units/quantity.ts'
import type { RoofWind } from './roofWind.ts'

const posts = ['windward', 'leeward'] as const
const reaction = { windward: workedWindwardReaction, leeward: workedLeewardReaction }

/**
 * One wind case at each post of the frame: by the half of the roof that the post carries, and by statics of the whole frame. Every
 * combination is tried with the wind that is worse for it: the greater uplift, and the greater push down.
 * @param steady loads that do not turn with the wind, at one post
 */
export function casesOf(estimate: LoadEstimate, roofWind: RoofWind, steady: LoadsByKind): readonly LoadCase[] {
  const isEven = roofWind.windward === roofWind.leeward
  return (isEven ? [posts[0]] : posts).map((post) => caseAt(estimate, roofWind, steady, post))
}

function caseAt(estimate: LoadEstimate, roofWind: RoofWind, steady: LoadsByKind, post: LoadCase['post']): LoadCase {
  const { edition, span, bay, overhang } = estimate
  const { wind, figure, inside, windward, leeward } = roofWind
  const own = post === 'windward' ? windward : leeward
  const area = workedTributaryLoad(
    { span, bay, overhang, pressure: pascals(-own.value) },
    { id: 'wind-by-area', standings: [own.standing], sources: own.sources },
  )
  const statics = reaction[post](
    { span, bay, overhang, windward: pascals(-windward.value), leeward: pascals(-leeward.value) },
    { id: 'wind-by-statics', standings: [windward.standing, leeward.standing], sources: own.sources },
  )
  const up = governingLoads(edition, 'ASD', { ...steady, wind: newtons(-Math.max(area.value, statics.value)) }).up
  const down = governingLoads(edition, 'ASD', { ...steady, wind: newtons(-Math.min(area.value, statics.value)) }).down
  const pressures: Worked[] = windward === leeward ? [windward] : [windward, leeward]
  return {
    id: [wind, figure, inside, post]
      .filter((part) => part !== null)
      .join('-')
      .toLowerCase(),
    wind,
    figure,
    inside,
    post,
    byArea: newtons(area.value),
    byStatics: newtons(statics.value),
    uplift: { combination: up.combination.id, load: newtons(-up.load) },
    gravity: { combination: down.combination.id, load: down.load },
    worked: [...roofWind.worked, ...pressures, area, statics],
  }
}
