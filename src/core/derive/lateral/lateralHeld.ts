import { workedAllowableConstrained, workedEmbedmentConstrained } from '../../engineering/soil/lateralConstrained.ts'
import type { Counting } from '../../model/kind.ts'
import type { Demand } from '../../model/result.ts'
import type { Check } from '../../model/worked.ts'
import { metres, newtons } from '../../units/quantity.ts'
import { makeCheck } from '../check.ts'
import type { PierFrame } from '../pierFrame.ts'
import { gradientOf, type LateralSite, withoutLoad } from './lateralSite.ts'

const base = { group: 'lateral', id: 'lateral-held-at-grade' } as const

/**
 * A floor or pavement holds the pier at grade: the force that the ground allows, and the depth that the force asks for. Never with twice
 * the tabulated value: a top that is held can't move the half inch that the doubling asks for.
 */
export function lateralHeld({ spec }: PierFrame, site: LateralSite, demand: Demand): Check {
  const { width, depth, height, gradient, where } = site
  const why = spec.sideways.ground === 'doubled' ? 'held-so-not-doubled' : 'held-by-floor'
  const counting: Counting =
    site.counting.counted === 'counted' ? { counted: 'counted', why, sources: ['ibc-1807-3-2-2', 'ibc-1806-3'] } : site.counting
  if (!height || !demand.lateral || counting.counted === 'not counted')
    return makeCheck({ ...base, where, worked: [width, depth, gradient], allowable: null, counting: withoutLoad(counting) })
  const ground = { gradient: gradientOf(site), multiplier: 1, width: metres(width.value), height: metres(height.value) }
  const use = { standings: [width.standing, height.standing, gradient.standing, demand.lateral.standing], sources: gradient.sources }
  const needed = workedEmbedmentConstrained({ ...ground, force: newtons(demand.lateral.value) }, { ...use, id: 'needed-embedment-held' })
  const allowable = workedAllowableConstrained({ ...ground, depth: metres(depth.value) }, { ...use, id: 'allowable-lateral-held' })
  return makeCheck({ ...base, where, worked: [width, height, depth, gradient, needed], allowable, counting, demand: demand.lateral })
}
