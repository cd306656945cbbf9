import { bromsFactors, workedBromsDrained, workedBromsUndrained, workedReducedFrictionAngle } from '../../engineering/soil/broms.ts'
import type { Counting } from '../../model/kind.ts'
import type { Demand } from '../../model/result.ts'
import type { Check, Worked } from '../../model/worked.ts'
import { metres, newtons, pascals, type Radians, type UnitWeight } from '../../units/quantity.ts'
import { makeCheck } from '../check.ts'
import { lessCounted } from '../counting.ts'
import { soilsBetween } from '../uplift/soilColumn.ts'
import type { LateralSite } from './lateralSite.ts'

const secondLook: Counting = { counted: "engineer's judgement", why: 'broms-is-a-second-look', sources: ['ufc-3-220-20'] }

/**
 * An independent look at the depth that a sideways force asks for: Broms' short pile, with the loads raised and the soil's strength
 * taken down. Null without a force, or where a soil passed has no strength of its own to work with.
 */
export function broms(site: LateralSite, demand: Demand): Check | null {
  const { column, width, depth, height, from, to, where } = site
  if (!height || !demand.lateral || !(demand.lateral.value > 0) || site.counting.counted === 'not counted') return null
  const load = { force: newtons(bromsFactors.live * demand.lateral.value), arm: metres(height.value), width: metres(width.value) }
  const passed = soilsBetween(column, { from, to })
  const standings = [...passed.map((values) => values.strengthStanding), demand.lateral.standing]
  const answers = passed.map((values): readonly Worked[] | null => {
    if (values.cohesion !== null && values.cohesion > 0)
      return [workedBromsUndrained({ ...load, strength: pascals(bromsFactors.strength * values.cohesion) }, { standings })]
    const unitWeight = (column.stress(to) / to) as UnitWeight
    if (values.frictionAngle === null || values.frictionAngle <= 0 || !(unitWeight > 0)) return null
    const angle = workedReducedFrictionAngle({ frictionAngle: values.frictionAngle, share: bromsFactors.strength }, { standings })
    return [angle, workedBromsDrained({ ...load, unitWeight, frictionAngle: angle.value as Radians }, { standings })]
  })
  let deepest: readonly Worked[] | null = null
  for (const one of answers) {
    if (!one) return null
    if (!deepest || last(one) > last(deepest)) deepest = one
  }
  const needed = deepest?.[deepest.length - 1]
  if (!deepest || !needed) return null
  return makeCheck({
    id: 'lateral-broms',
    group: 'lateral',
    where,
    worked: [width, height, ...deepest.slice(0, -1)],
    allowable: depth,
    counting: lessCounted(site.counting, secondLook),
    demand: needed,
  })
}

const last = (steps: readonly Worked[]): number => steps[steps.length - 1]?.value ?? 0
