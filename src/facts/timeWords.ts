import type { Band, MixedConcrete, SoundByYear } from '../core/model/timeResult.ts'
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

/** Of a hundred such posts: no fewer and no more than a band leaves open as gone by a year; null past its last year. */
export function goneOf100(sound: SoundByYear, year: number): Readonly<{ low: string; high: string }> | null {
  const at = sound[year]
  if (at === undefined) return null
  const low = Math.floor(100 * (1 - at.share.high) + 1e-9)
  return { low: String(low), high: String(Math.ceil(100 * (1 - at.share.low) - 1e-9)) }
}

/** Share still sound in percent: no more at either end than a band leaves open. */
export const soundPercents = ({ low, high }: Band): string =>
  wordsOf('time').percent(String(Math.floor(100 * low + 1e-9)), String(Math.ceil(100 * high - 1e-9)))

/** Last year that a band speaks of. */
export const lastYearOf = (sound: SoundByYear): number => Math.max(0, sound.length - 1)

/** The same at that year, as a sentence. */
export function goneSentence(sound: SoundByYear): string {
  const year = lastYearOf(sound)
  const { low = '', high = '' } = goneOf100(sound, year) ?? {}
  const { by, ends } = wordsOf('time').years
  return `${by(String(year), low, high)} ${ends}`
}
