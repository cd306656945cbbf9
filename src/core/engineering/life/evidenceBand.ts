import type { Seconds } from '../../units/quantity.ts'
import type { EvidenceRow } from '../tables/lifeEvidence.ts'
import { failedInterval } from './failedInterval.ts'
import { referenceLife } from './referenceLife.ts'
import { shareSound, shareSoundBand, weibullThrough } from './weibull.ts'

type Share = Readonly<{ low: number; high: number }>

/** What a row of evidence leaves open of the share that is gone: at a time, up to the time at which the row ends. */
export type EvidenceBand = Readonly<{
  gone: (time: Seconds) => Share
  /** Time up to which the row speaks [s]; null for one that tells a life, after which all are gone sooner or later. */
  until: Seconds | null
}>

/** A share of failures that grows at an even rate: decay does not slow down with age, so no band rises faster. Source: assumption. */
const even = (time: Seconds, at: Seconds, share: number): number => -Math.expm1((time / at) * Math.log1p(-share))

/**
 * What a row of evidence leaves open of the share that is gone.
 * @param row of evidence, of which failures were counted or which tells a life [1]
 * @param confidence of the interval about a count [1]
 * @param steepest most that lives of one row bunch together, as the k of a Weibull curve [1]: only for a row that tells a life
 * @returns least and greatest share gone over time, and where the row ends [s]; null for a row with neither
 * Formula: for k of n failed by T: from the Weibull curve through (T, low) and the row's median, up to 1 - (1 - high)^(t/T),
 *   with low and high of the 95 % interval. For a life L: between 1 - 2^(-t/L) and the curve of `steepest` with median L
 * Valid: wood, place and contact like the row's. Outside: nothing past the time that was watched.
 * Source: binomial-bound, weibull-two-points, assumption (the rate of loss does not fall with age)
 * Checked by: tests/core/engineering/life/evidenceBand.test.ts
 */
export function evidenceBand(row: EvidenceRow, confidence: number, steepest: number): EvidenceBand | null {
  const { sample, watched, median } = row
  if (sample && sample.failed !== null && watched) {
    const at = watched.value
    const { low, high } = failedInterval({ failed: sample.failed, sample: sample.count, confidence })
    const slow = low > 0 && median ? weibullThrough({ time: at, failed: low, median: median.value }) : null
    if (low > 0 && slow === null) return null
    return {
      gone: (time) => ({ low: slow ? 1 - shareSound({ time, ...slow }) : 0, high: even(time, at, high) }),
      until: at,
    }
  }
  const life = referenceLife(row)
  if (life === null) return null
  // "Or more" bounds one side alone: no more than that is gone, and perhaps nothing.
  return life.high === null
    ? { gone: (time) => ({ low: 0, high: even(time, life.low, 0.5) }), until: life.low }
    : lifeBand({ low: life.low, high: life.high }, steepest)
}

/**
 * What two ends of a life leave open of the share that is gone: spread evenly, or bunched.
 * @param low least time that half last [s]
 * @param high most time that half last [s]
 * @param steepest most that lives bunch together, as the k of a Weibull curve [1]
 * @returns least and greatest share gone over time [1]; it speaks of any time
 * Formula: between the curves k = 1 and k = `steepest` through the medians `low` and `high`
 * Valid: 0 < low <= high, steepest >= 1. Outside: no band is claimed.
 * Source: weibull-two-points
 * Checked by: tests/core/engineering/life/evidenceBand.test.ts
 */
export function lifeBand({ low, high }: Readonly<{ low: Seconds; high: Seconds }>, steepest: number): EvidenceBand {
  const shape = { low: 1, high: steepest }
  const gone: EvidenceBand['gone'] = (time) => {
    const sound = shareSoundBand({ time, median: { low, high }, shape })
    return { low: 1 - sound.high, high: 1 - sound.low }
  }
  return { gone, until: null }
}

/**
 * Steepest curve that a count of failures leaves open with the median of its row.
 * @param sample number of posts and of those that failed [1]
 * @param watched time at which they were counted [s]
 * @param median time that half last [s]
 * @param confidence of the interval about the count [1]
 * @returns shape k of the Weibull curve [1]; null for a row without a failure, a time or a median
 * Formula: k of the curve through (watched, low end of the interval) and the median
 * Valid: 0 < watched, 0 < confidence < 1. Outside: null.
 * Source: binomial-bound, weibull-two-points
 * Checked by: tests/core/engineering/life/evidenceBand.test.ts
 */
export function steepestOf({ sample, watched, median }: EvidenceRow, confidence: number): number | null {
  if (!sample?.failed || !watched || !median) return null
  const { low } = failedInterval({ failed: sample.failed, sample: sample.count, confidence })
  return weibullThrough({ time: watched.value, failed: low, median: median.value })?.shape ?? null
}
