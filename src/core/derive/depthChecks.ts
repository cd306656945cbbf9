import type { CheckId, ReasonId } from '../model/saidIds.ts'
import type { Cited } from '../engineering/cited.ts'
import { leastFootingDepth, workedDepthAtDownhillEdge } from '../engineering/soil/depths.ts'
import { standOffRules } from '../engineering/tables/standOff.ts'
import type { Depths, ExposureLine } from '../model/result.ts'
import type { Check, Worked } from '../model/worked.ts'
import type { SourceId } from '../engineering/sources.ts'
import { type Metres, metres } from '../units/quantity.ts'
import { makeCheck } from './check.ts'
import { bearingBody, bearingRadius } from './depths.ts'
import { given, limitOf } from './given.ts'
import type { PierFrame } from './pierFrame.ts'

/** Frost and least depth, both at the downhill edge of the bearing surface. `demand` is the depth asked for. */
export function depthChecks(frame: PierFrame, depths: Depths): Check[] {
  const there = workedDepthAtDownhillEdge(
    { depthAtAxis: depths.bearingAtAxis, radius: metres(bearingRadius(frame)), slope: frame.spec.site.slope },
    { id: 'bearing-depth-downhill' },
  )
  const asked = (id: string, value: number, source: SourceId, standing: Worked['standing']) =>
    given(id, value, 'length', { formula: 'd', sources: [source], standing })
  const check = (id: CheckId, demand: Worked, why: ReasonId): Check =>
    makeCheck({
      id,
      group: 'frost',
      where: bearingBody(frame),
      worked: [],
      allowable: there,
      demand,
      counting: { counted: 'counted', why, sources: demand.sources },
    })
  return [
    check('frost-depth', asked('frost-depth', frame.spec.site.frostDepth, 'ibc-1809-5', 'read'), 'frost-at-downhill-edge'),
    check('least-depth', asked('least-depth', leastFootingDepth.value, 'ibc-1809-4', 'secondary'), 'least-depth-at-downhill-edge'),
  ]
}

/**
 * Heights of a bracketed post's end: above the concrete under it, and above grade at the uphill edge of the pier. Held against
 * the clearances under which a code lets wood go untreated: a condition for that, not a duty to stand the post off.
 */
export function standOff(frame: PierFrame): Readonly<{ aboveConcrete: Metres; aboveGrade: Metres; checks: readonly Check[] }> | null {
  const { bracketSite, spec, profile, foot } = frame
  if (!bracketSite) return null
  const rule = standOffRules[spec.code]
  // A post of an open building stands out in the weather, which one edition's exception leaves out.
  const why = rule.weatherExposed
    ? rule.join === 'both'
      ? 'stand-off-needs-both'
      : 'stand-off-is-a-condition'
    : 'stand-off-not-in-weather'
  const aboveGrade = metres(foot - spec.site.slope * profile.shaftRadius)
  const held = (id: 'stand-off-above-concrete' | 'stand-off-above-earth', is: number, least: Cited): Check => ({
    ...makeCheck({
      id,
      group: 'detail',
      where: ['bracket-seat', 'post'],
      worked: [],
      allowable: given(id, is, 'length'),
      demand: limitOf(`${id}-least`, least, 'length'),
      counting: { counted: 'counted', why, sources: [least.source] },
    }),
    condition: true,
  })
  return {
    aboveConcrete: bracketSite.standOff,
    aboveGrade,
    checks: [
      held('stand-off-above-concrete', bracketSite.standOff, rule.aboveConcrete),
      held('stand-off-above-earth', aboveGrade, rule.aboveEarth),
    ],
  }
}

/** The longest of the three lines of wood below grade. */
export const mostBuried = (lines: readonly ExposureLine[]): number => Math.max(...lines.map((line) => line.belowGrade))
