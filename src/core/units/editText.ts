import { fromSI, inputUnit, toSI } from './factors.ts'
import { parseQuantity } from './parse.ts'
import type { QuantityKind, UnitSystem } from './quantity.ts'

/** `zero`: the SI value of nought units, which a temperature is told from. */
const readsWithin = (text: string, kind: QuantityKind, value: number, zero: number, rel: number): boolean => {
  const reading = parseQuantity(text, kind)
  return reading.ok && Math.abs(reading.value - value) <= rel * (Math.abs(value) + Math.abs(zero))
}

/**
 * The shortest decimal text, with its unit, that reads back as the value to the last bit; where none does, within 1e-12 relative.
 * It is what an input field offers for editing, and switching units back and forth over it never drifts.
 *
 * @param value SI, finite; throws when it is not (a broken invariant, never a user's doing)
 */
export function editText(value: number, kind: QuantityKind, system: UnitSystem): string {
  if (!Number.isFinite(value)) throw new RangeError(`editText: ${value} is not finite`)
  const unit = inputUnit[system][kind]
  const suffix = unit === '1' ? '' : ` ${unit}`
  const amount = fromSI(value, unit)
  const texts = Array.from({ length: 17 }, (_, i) => `${Number(amount.toPrecision(i + 1))}${suffix}`)
  const closest = (rel: number) => texts.find((text) => readsWithin(text, kind, value, toSI(0, unit), rel))
  return closest(0) ?? closest(1e-12) ?? `${amount + 0}${suffix}`
}
