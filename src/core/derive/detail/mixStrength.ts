import { backfillMinimum, residentialStrength, structuralMinimum } from '../../engineering/tables/concrete.ts'
import { heightAt } from '../../geometry/surface.ts'
import type { Check } from '../../model/worked.ts'
import { makeCheck } from '../check.ts'
import { carriesAsConcrete } from '../counting.ts'
import { given, limitOf } from '../given.ts'
import type { PierFrame } from '../pierFrame.ts'
import { freezeThaw } from './freezeThaw.ts'

/**
 * Strength of mixed concrete against its floors: structural concrete, concrete that fills a post hole, concrete out in the weather
 * or buried, and the freeze-thaw class. Empty where no concrete carries anything.
 */
export function mixStrength(frame: PierFrame): Check[] {
  const { spec, lifts, standing } = frame
  const hosts = lifts.filter((lift) => carriesAsConcrete(lift.role, spec)).map((lift) => lift.id)
  const where = hosts.length > 0 ? hosts : spec.hole.base?.material === 'concrete' ? ['base'] : []
  if (where.length === 0) return []
  const allowable = given('strength-there', spec.concrete.strength, 'strength', {
    formula: "f'_c",
    sources: ['user'],
    standing: 'assumed here',
  })
  const base = { group: 'detail', where, worked: [], allowable } as const
  const inOpen = standsInOpen(frame)
  const element = inOpen ? 'exposed-vertical' : 'not-exposed'
  const floor = residentialStrength[element][spec.site.weathering]
  return [
    makeCheck({
      ...base,
      id: 'strength-structural',
      demand: limitOf('strength-structural-least', structuralMinimum, 'strength'),
      counting: { counted: 'counted', why: 'strength-of-structural-concrete', sources: [structuralMinimum.source] },
    }),
    ...(standing && hosts.length > 0
      ? [
          makeCheck({
            ...base,
            id: 'strength-backfill',
            demand: limitOf('strength-backfill-least', backfillMinimum, 'strength'),
            counting: { counted: 'counted', why: 'strength-of-backfill-concrete', sources: [backfillMinimum.source] },
          }),
        ]
      : []),
    makeCheck({
      ...base,
      id: 'strength-weather',
      demand: limitOf('strength-weather-least', floor.strength, 'strength'),
      counting: {
        counted: 'counted',
        why: floor.airEntrained ? 'weather-asks-for-air' : 'weather-asks-no-air',
        sources: [floor.strength.source],
      },
    }),
    freezeThaw(frame, { where, allowable, inOpen }),
  ]
}

/** Whether concrete comes up to or above the ground anywhere round its rim. */
function standsInOpen({ end, profile, spec, innerRadius }: PierFrame): boolean {
  if (end.kind !== 'top') return false
  const drop = spec.site.slope * profile.shaftRadius
  return Math.max(heightAt(end.surface, profile.shaftRadius, 0), heightAt(end.surface, innerRadius, 0)) + drop > 0
}
