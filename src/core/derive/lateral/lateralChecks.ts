import type { Demand } from '../../model/result.ts'
import type { Check } from '../../model/worked.ts'
import { countingOf } from '../counting.ts'
import { makeCheck } from '../check.ts'
import type { PierFrame } from '../pierFrame.ts'
import type { SoilColumn } from '../uplift/soilColumn.ts'
import { broms } from './broms.ts'
import { lateralFree } from './lateralFree.ts'
import { lateralHeld } from './lateralHeld.ts'
import { lateralSite } from './lateralSite.ts'

/** How the ground holds the pier sideways: by the code's rule, free or held at grade, and by an independent look. */
export function lateralChecks(frame: PierFrame, column: SoilColumn, demand: Demand): Check[] {
  const { spec } = frame
  const isHeld = spec.sideways.top === 'held-at-grade'
  const site = lateralSite(frame, column, demand)
  if (!site) {
    const sideways = countingOf(spec).sideways
    const counting = sideways.counted === 'not counted' ? sideways : ({ counted: 'not counted', why: 'only-topsoil', sources: [] } as const)
    return [
      makeCheck({
        id: isHeld ? 'lateral-held-at-grade' : 'lateral-embedment',
        group: 'lateral',
        where: frame.standing ? ['post'] : frame.lifts.map((lift) => lift.id),
        worked: [],
        allowable: null,
        counting,
      }),
    ]
  }
  const second = broms(site, demand)
  return [(isHeld ? lateralHeld : lateralFree)(frame, site, demand), ...(second ? [second] : [])]
}
