import type { Seconds } from '../../units/quantity.ts'
import type { EvidenceRow } from '../tables/lifeEvidence.ts'
import { type Weibull, weibullThrough } from './weibull.ts'
import { zeroFailureBound } from './zeroFailures.ts'

/** What a row can say about the share still sound. */
export type EvidenceCurve =
  | Readonly<{ kind: 'curve'; row: EvidenceRow; weibull: Weibull }>
  | Readonly<{ kind: 'bound'; row: EvidenceRow; at: Seconds; mostFailed: number }>

/**
 * What a row of evidence says of the share still sound: a curve through its two points, or a bound where none failed.
 * @param row of evidence [1]
 * @param confidence of the bound where none failed [1]
 * @returns curve [1, s], or time [s] and greatest share failed [1]; null where the row has neither
 * Formula: Weibull curve through (watched, failed/count) and (median, 1/2); 1 - (1 - c)^(1/n) where none failed
 * Valid: as an outline of what such posts did at that site. Outside: today's treatments, other soils and building posts are not in it.
 * Source: weibull-two-points, binomial-bound
 * Checked by: tests/external/weibull-two-points/check.test.ts
 */
export function evidenceCurve(row: EvidenceRow, confidence: number): EvidenceCurve | null {
  const { sample, watched, median } = row
  if (!sample || sample.failed === null || !watched) return null
  if (sample.failed === 0) {
    const mostFailed = zeroFailureBound({ sample: sample.count, confidence })
    return mostFailed === null ? null : { kind: 'bound', row, at: watched.value, mostFailed }
  }
  if (!median) return null
  const weibull = weibullThrough({ time: watched.value, failed: sample.failed / sample.count, median: median.value })
  return weibull && { kind: 'curve', row, weibull }
}
