import type { Cited } from '../../engineering/cited.ts'
import { workedCapillaryHold, workedConductivityRatio, workedJointConductivity } from '../../engineering/moisture/jointConductivity.ts'
import { workedJointAtFace } from '../../engineering/moisture/jointGap.ts'
import { workedJointVolume, workedRoundJointVolume } from '../../engineering/moisture/jointVolume.ts'
import { fibreSaturation, woodShrinkage, workedWoodShrinkage } from '../../engineering/moisture/woodShrinkage.ts'
import { renamed, retold } from '../../engineering/showing.ts'
import { concreteConductivity } from '../../engineering/tables/conductivity.ts'
import { saturatedOverModel, textures, texturesOfClass } from '../../engineering/tables/infiltration.ts'
import { waterUnitWeight } from '../../engineering/tables/materials.ts'
import { postSections } from '../../engineering/tables/postSections.ts'
import { groupShrinkage } from '../../engineering/tables/shrinkage.ts'
import type { JointResult, PostSide } from '../../model/moistureResult.ts'
import type { PierSpec } from '../../model/spec.ts'
import type { Worked } from '../../model/worked.ts'
import { type Metres, metres, metresPerSecond } from '../../units/quantity.ts'

/**
 * Gaps at one face, across the width and across the depth of the post: most along the growth rings, least across them, over the
 * species of the group. A pole and a square post have one size, so two.
 */
export function jointGaps({ post, water }: PierSpec): Worked[] {
  const { shape, width, depth } = postSections[post.section]
  const along = groupShrinkage(post.species, 'tangential').high
  const across = groupShrinkage(post.species, 'radial').low
  const moistures = [
    { symbol: 'M_{before}', name: 'moistureAtSetting', value: water.atSetting, quantity: 'ratio' },
    { symbol: 'M_{now}', name: 'moistureInService', value: water.inService, quantity: 'ratio' },
  ] as const
  const gap = (id: string, size: Metres, whole: Cited): Worked => {
    const worked = workedJointAtFace(
      {
        size,
        before: woodShrinkage({ whole: whole.value, moisture: water.atSetting }),
        now: woodShrinkage({ whole: whole.value, moisture: water.inService }),
      },
      { id, standings: [whole.standing, fibreSaturation.standing], sources: [whole.source] },
    )
    const shrinkage = workedWoodShrinkage.recipe.formula
    return retold(worked, id, {
      formula: String.raw`\begin{gathered}${worked.formula}\\ ${shrinkage}\end{gathered}`,
      inputs: [...worked.inputs, { symbol: 'S_0', name: 'wholeShrinkage', value: whole.value, quantity: 'ratio' }, ...moistures],
    })
  }
  const both = (side: string, size: Metres) => [
    gap(`joint-gap-${side}-along-rings`, size, along),
    gap(`joint-gap-${side}-across-rings`, size, across),
  ]
  if (shape === 'round') return both('diameter', width)
  return width === depth ? both('width', width) : [...both('width', width), ...both('depth', depth)]
}

export const widestOf = (gaps: readonly Worked[]): Metres => metres(Math.max(0, ...gaps.map((gap) => gap.value)))

type At = Readonly<{ top: Readonly<Record<PostSide, Metres>>; reach: Metres }>

/**
 * The joint of a post whose sides are in something that has set up to its top.
 * @param at its top on each side and how deep it goes [m]
 */
export function jointResult(spec: PierSpec, { top, reach }: At): JointResult {
  const gaps = jointGaps(spec)
  const widest = widestOf(gaps)
  const conductivity = widest > 0 ? workedJointConductivity({ gap: widest }) : null
  return {
    top,
    reach,
    gaps,
    widest,
    volume: volumeOf(spec, gaps, reach),
    conductivity,
    against: conductivity ? against(spec, conductivity.value) : [],
    capillaryHold: widest > 0 ? workedCapillaryHold({ gap: widest, water: waterUnitWeight.value }) : null,
    standing: 'assumed here',
  }
}

/** Water in the joint, opened as wide as it may on every face. */
function volumeOf({ post }: PierSpec, gaps: readonly Worked[], reach: Metres): Worked {
  const { shape, width, depth } = postSections[post.section]
  const use = { standings: ['assumed here'], sources: ['assumption'] } as const
  const opened = (side: string) => metres(2 * widestOf(gaps.filter((gap) => gap.id.startsWith(`joint-gap-${side}`))))
  return shape === 'round'
    ? renamed(workedRoundJointVolume({ diameter: width, gap: opened('diameter'), reach, shape: 'wedge' }, use), {
        gap: 'bothGaps',
        reach: 'jointDepth',
      })
    : renamed(
        workedJointVolume(
          { width, depth, gapWidth: opened('width'), gapDepth: opened(width === depth ? 'width' : 'depth'), reach, shape: 'wedge' },
          use,
        ),
        {
          reach: 'jointDepth',
        },
      )
}

/** Times better than the worst sound concrete, and than the fastest and slowest soil of the site. */
function against({ site, water }: PierSpec, joint: number): Worked[] {
  const worst = concreteConductivity.high
  const concrete = workedConductivityRatio(
    { joint: metresPerSecond(joint), other: worst.value },
    { id: 'joint-against-concrete', standings: [worst.standing], sources: [worst.source, 'parallel-plates'] },
  )
  const all = water.texture ? [water.texture] : site.soil.kind === 'presumptive' ? texturesOfClass[site.soil.class] : []
  const soils = all
    .map((texture) => textures[texture].conductivity)
    .sort((p, q) => q.value - p.value)
    .filter((_, i, list) => i === 0 || i === list.length - 1)
  const named = soils.length === 1 ? ['joint-against-soil'] : ['joint-against-fastest-soil', 'joint-against-slowest-soil']
  return [
    concrete,
    ...soils.map((one, i) =>
      workedConductivityRatio(
        { joint: metresPerSecond(joint), other: metresPerSecond(saturatedOverModel.value * one.value) },
        {
          id: named[i] ?? 'joint-against-soil',
          standings: [one.standing, saturatedOverModel.standing],
          sources: [one.source, 'parallel-plates'],
        },
      ),
    ),
  ]
}
