import type { Order } from '../../../core/model/result.ts'
import type { UnitSystem } from '../../../core/units/quantity.ts'
import { wordsOf } from '../../../words/index.ts'
import type { Say } from '../../hooks/useUnits.ts'

/** One way to buy it, for one pier or for the job. */
export const orderWords = (order: Order, system: UnitSystem, say: Say, scope: 'each' | 'job', length: 'long' | 'short' = 'long'): string =>
  order.as === 'bags'
    ? wordsOf('app').answers[length === 'long' ? 'bags' : 'bagsShort'](say(order[scope], 'count'), order.bagSize)
    : say(order[scope], 'volume', { unit: system === 'us' ? 'yd3' : 'm3' }).replace(' ', '\u00a0')
