import type { Band, MixedConcrete } from '../core/model/timeResult.ts'
import { formatQuantity } from '../core/units/format.ts'
import type { Seconds } from '../core/units/quantity.ts'
import { wordsOf } from '../words/index.ts'

const secondsInDay = 86_400
const secondsInYear = 31_557_600
export const daysOf = (span: Seconds): number => span / secondsInDay
export const yearsOf = (span: Seconds): number => span / secondsInYear

/** Years as they are read: whole from ten on. */
export const yearsText = (span: Seconds): string => {
  const years = yearsOf(span)
  return years >= 10 ? String(Math.round(years)) : formatQuantity(span, 'life', 'metric').text
}

/** Share reached on a day, between the ages that the curve is worked out at. */
export function gainOn({ gain }: MixedConcrete, day: number): Band {
  const after = gain.findIndex(({ age }) => daysOf(age) >= day - 1e-9)
  const [a, b] = [gain[Math.max(0, after - 1)], gain[after === -1 ? gain.length - 1 : after]]
  if (!a || !b) return { low: 0, high: 0 }
  const from = daysOf(a.age)
  const way = daysOf(b.age) > from ? (day - from) / (daysOf(b.age) - from) : 1
  const between = (end: 'low' | 'high'): number => a.share[end] + way * (b.share[end] - a.share[end])
  return { low: between('low'), high: between('high') }
}

const percent = (share: number): string => String(Math.round(share * 100))
export const percents = ({ low, high }: Band): string => wordsOf('time').percent(percent(low), percent(high))
