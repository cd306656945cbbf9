import type { Seconds } from '../../units/quantity.ts'
import { cited } from '../cited.ts'

/** Real rates: where the slider starts, and its ends. One agency's rate is not "the" rate of a homeowner. Source: femp-rate-2010, omb-a-94, assumption. */
export const realRates = {
  start: cited(3, '%', 'femp-rate-2010', 'read'),
  low: cited(1, '%', 'assumption', 'assumed here'),
  high: cited(7, '%', 'omb-a-94', 'from memory'),
} as const

/** Time over which costs are counted, to start with. Source: assumption. */
export const costHorizon = cited<Seconds>(60, 'yr', 'assumption', 'assumed here')

/** Time to swap a post on a bolted bracket, said in the trade. Source: common-practice. */
export const bracketReplacementTime = cited<Seconds>(2, 'h', 'common-practice', 'common practice')
