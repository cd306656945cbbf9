import { poleDoubling } from '../../engineering/soil/lateralPressure.ts'
import { workedAllowableLateral, workedEmbedmentNonconstrained } from '../../engineering/soil/lateralNonconstrained.ts'
import type { Demand } from '../../model/result.ts'
import type { Check, Worked } from '../../model/worked.ts'
import { metres, newtons } from '../../units/quantity.ts'
import { makeCheck } from '../check.ts'
import type { PierFrame } from '../pierFrame.ts'
import { belowFrost, gradientOf, type LateralSite, withoutLoad } from './lateralSite.ts'

const base = { group: 'lateral', id: 'lateral-embedment' } as const

/**
 * Nothing holds the pier at grade: the force that the ground allows at the depth that is there, and the depth that the force asks for,
 * each with the tabulated value and with twice of it. The one chosen is used.
 */
export function lateralFree({ spec }: PierFrame, site: LateralSite, demand: Demand): Check {
  const { width, depth, height, gradient, counting, where } = site
  if (!height || !demand.lateral || counting.counted === 'not counted')
    return makeCheck({ ...base, where, worked: [width, depth, gradient], allowable: null, counting: withoutLoad(counting) })
  const force = newtons(demand.lateral.value)
  const ground = { height: metres(height.value), gradient: gradientOf(site), width: metres(width.value) }
  const use = { standings: [width.standing, height.standing, gradient.standing, demand.lateral.standing], sources: gradient.sources }
  const steps = [1, poleDoubling.value].map((multiplier) => {
    const suffix = multiplier === 1 ? 'as-tabulated' : 'doubled'
    const needed = workedEmbedmentNonconstrained({ ...ground, force, multiplier }, { ...use, id: `needed-embedment-${suffix}` })
    const allowable = workedAllowableLateral(
      { ...ground, depth: metres(depth.value), multiplier },
      { ...use, id: `allowable-lateral-${suffix}` },
    )
    return { multiplier, needed, allowable, atAxis: needed && neededDepth(needed, site) }
  })
  const isDoubled = spec.sideways.ground === 'doubled'
  const multiplier = isDoubled ? poleDoubling.value : 1
  const chosen = steps.find((step) => step.multiplier === multiplier)
  const other = steps.find((step) => step !== chosen)
  const frozen = belowFrost(site, spec.site.frostDepth)
  const frostOut = frozen && workedAllowableLateral({ ...ground, ...frozen, multiplier }, { ...use, id: 'allowable-lateral-below-frost' })
  const worked = [width, height, depth, gradient, chosen?.needed, chosen?.atAxis, other?.needed, other?.allowable, frostOut]
  return makeCheck({
    ...base,
    where,
    worked: worked.filter((one) => one !== undefined && one !== null),
    allowable: chosen?.allowable ?? null,
    counting,
    demand: demand.lateral,
  })
}

/** The depth that is needed, measured from grade on the axis as a hole is dug. */
const neededDepth = (needed: Worked, { lost }: LateralSite): Worked => ({
  id: 'needed-depth-at-axis',
  value: needed.value + lost,
  quantity: 'length',
  formula: String.raw`d_c = d + t_0 + r\,s`,
  inputs: [
    { symbol: 'd', name: 'depth', value: needed.value, quantity: 'length' },
    { symbol: String.raw`t_0 + r\,s`, name: 'lost', value: lost, quantity: 'length' },
  ],
  sources: needed.sources,
  standing: needed.standing,
})
