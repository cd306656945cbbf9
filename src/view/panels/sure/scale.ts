import { fromSI, inputUnit, toSI } from '../../../core/units/factors.ts'
import type { QuantityKind, UnitSystem } from '../../../core/units/quantity.ts'

/** A straight scale from a stretch of values to a stretch of the drawing. */
export type Scale = Readonly<{ from: number; to: number; at: (value: number) => number }>

export const straightScale = (from: number, to: number, left: number, right: number): Scale => ({
  from,
  to,
  at: (value) => left + ((value - from) / (to - from)) * (right - left),
})

/** Round values between two ends, in the reader's unit: at most `most` of them, one, two or five apart. SI. */
export function roundValues(from: number, to: number, quantity: QuantityKind, system: UnitSystem, most: number): readonly number[] {
  const unit = inputUnit[system][quantity]
  const [low, high] = [fromSI(from, unit), fromSI(to, unit)]
  const rough = (high - low) / most
  if (!(rough > 0)) return []
  const power = 10 ** Math.floor(Math.log10(rough))
  const step = power * ([1, 2, 5, 10].find((one) => one * power >= rough) ?? 10)
  const values: number[] = []
  for (let k = Math.ceil(low / step); k * step <= high; k++) values.push(toSI(k * step, unit))
  return values
}
