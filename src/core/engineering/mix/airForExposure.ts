import type { Standing } from '../../model/worked.ts'
import type { SourceId } from '../sources.ts'
import { type AggregateSize, airContent, airTolerance } from '../tables/airContent.ts'
import type { FreezeThaw } from '../tables/concrete.ts'

type Inputs = Readonly<{ exposure: FreezeThaw; aggregate: AggregateSize }>
export type AirTarget = Readonly<{ low: number; target: number; high: number; sources: readonly SourceId[]; standing: Standing }>

/**
 * Air that concrete is to hold where it freezes wet.
 * @param exposure freeze-thaw class F0 to F3 [1]
 * @param aggregate nominal greatest size [1]
 * @returns target and its tolerance, shares of the volume [1]; null for F0, which asks for none
 * Formula: the table's row, more or less 1.5 %
 * Valid: strengths up to 5000 psi. Outside: one percent less is allowed above that (from memory).
 * Source: aci-318-19-19-3-3, astm-c94-air
 * Checked by: tests/external/ufgs-03311-air/check.test.ts
 */
export function airForExposure({ exposure, aggregate }: Inputs): AirTarget | null {
  if (exposure === 'F0') return null
  const { value: target, source, standing } = airContent[aggregate][exposure === 'F1' ? 'F1' : 'F2']
  return {
    low: target - airTolerance.value,
    target,
    high: target + airTolerance.value,
    sources: [source, airTolerance.source],
    standing,
  }
}
