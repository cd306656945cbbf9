import { type Seconds, seconds } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

export type Weibull = Readonly<{ shape: number; scale: Seconds }>
type FitInputs = Readonly<{ time: Seconds; failed: number; median: Seconds }>

/**
 * Weibull curve through a share of failures at a time and a published median.
 * @param time at which failures were counted [s], positive
 * @param failed share failed by then [1], above 0 and below 1, not one half
 * @param median time at which half have failed [s], positive, not `time`
 * @returns shape [1] and scale [s]; null where no rising curve passes through both
 * Formula: k = ln[ln 2/(-ln(1 - p))]/ln(t50/t), eta = t50/(ln 2)^(1/k)
 * Valid: a shape for uncertainty. Outside: the authors of the data may have fitted otherwise.
 * Source: weibull-two-points
 * Checked by: tests/external/weibull-two-points/check.test.ts
 */
export function weibullThrough({ time, failed, median }: FitInputs): Weibull | null {
  if (!(failed > 0 && failed < 1) || !(time > 0) || !(median > 0) || time === median) return null
  const shape = Math.log(Math.LN2 / -Math.log1p(-failed)) / Math.log(median / time)
  return shape > 0 && Number.isFinite(shape) ? { shape, scale: scaleOfMedian({ median, shape }) } : null
}

/**
 * Scale of the Weibull curve with a median and a shape.
 * @param median time at which half have failed [s]
 * @param shape k [1], positive
 * @returns scale [s]
 * Formula: eta = t50/(ln 2)^(1/k)
 * Valid: always. Outside: none.
 * Source: weibull-two-points
 * Checked by: tests/external/weibull-two-points/check.test.ts
 */
export function scaleOfMedian({ median, shape }: Readonly<{ median: Seconds; shape: number }>): Seconds {
  return seconds(median / Math.LN2 ** (1 / shape))
}

type SoundInputs = Readonly<{ time: Seconds }> & Weibull

/**
 * Share still sound after a time.
 * @param time since setting [s], non-negative
 * @param shape k [1], positive
 * @param scale eta [s], positive
 * @returns share [1]
 * Formula: S = exp[-(t/eta)^k]
 * Valid: as for the curve. Outside: none.
 * Source: weibull-two-points
 * Checked by: tests/external/weibull-two-points/check.test.ts
 */
export function shareSound({ time, shape, scale }: SoundInputs): number {
  return Math.exp(-((time / scale) ** shape))
}

type Range<T extends number> = Readonly<{ low: T; high: T }>
type BandInputs = Readonly<{ time: Seconds; median: Range<Seconds>; shape: Range<number> }>

/**
 * Share still sound after a time, as a range over a range of median life and of shape.
 * @param time since setting [s], non-negative
 * @param median least and greatest time at which half have failed [s]
 * @param shape least and greatest k [1]
 * @returns least and greatest share [1]
 * Formula: least and greatest of the four corners: the share falls or rises steadily with each of the two
 * Valid: a range for showing, not a forecast. Outside: none.
 * Source: weibull-two-points
 * Checked by: tests/core/engineering/life/weibull.test.ts
 */
export function shareSoundBand({ time, median, shape }: BandInputs): Range<number> {
  const corners = [median.low, median.high].flatMap((half) =>
    [shape.low, shape.high].map((k) => shareSound({ time, shape: k, scale: scaleOfMedian({ median: half, shape: k }) })),
  )
  return { low: Math.min(...corners), high: Math.max(...corners) }
}

/** Share still sound, with its work shown. */
export const workedShareSound = showing({
  id: 'share-sound',
  quantity: 'ratio',
  formula: String.raw`S = \exp\!\left[-(t/\eta)^k\right]`,
  terms: { time: ['t', 'life'], scale: [String.raw`\eta`, 'life'], shape: ['k', 'ratio'] },
  sources: ['weibull-two-points'],
  of: shareSound,
})

/** Shape of the curve through two points, with its work shown. */
export const workedWeibullShape = showing({
  id: 'weibull-shape',
  quantity: 'ratio',
  formula: String.raw`k = \frac{\ln[\ln 2/(-\ln(1 - p))]}{\ln(t_{50}/t)}`,
  terms: { failed: ['p', 'ratio'], time: ['t', 'life'], median: ['t_{50}', 'life'] },
  sources: ['weibull-two-points'],
  of: (inputs: FitInputs) => weibullThrough(inputs)?.shape ?? null,
})

/** Scale of the curve through two points, with its work shown. */
export const workedWeibullScale = showing({
  id: 'weibull-scale',
  quantity: 'life',
  formula: String.raw`\eta = t_{50}/(\ln 2)^{1/k}`,
  terms: { failed: ['p', 'ratio'], time: ['t', 'life'], median: ['t_{50}', 'life'] },
  sources: ['weibull-two-points'],
  of: (inputs: FitInputs) => weibullThrough(inputs)?.scale ?? null,
})
