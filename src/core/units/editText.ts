import { fromSI, inputUnit, toSI } from './factors.ts'
import { parseQuantity } from './parse.ts'
import type { QuantityKind, UnitSystem } from './quantity.ts'

/** `zero`: the SI value of nought units, which a temperature is told from. */
const readsAs = (text: string, kind: QuantityKind, value: number, zero: number): boolean => {
  const reading = parseQuantity(text, kind)
  return reading.ok && Math.abs(reading.value - value) <= 1e-12 * (Math.abs(value) + Math.abs(zero))
}

/**
 * The shortest decimal text, with its unit, that reads back as the value within 1e-12 relative: what an input field offers for
 * editing. Switching units back and forth over it never drifts.
 *
 * @param value SI, finite; throws when it is not (a broken invariant, never a user's doing)
 */
export function editText(value: number, kind: QuantityKind, system: UnitSystem): string {
  if (!Number.isFinite(value)) throw new RangeError(`editText: ${value} is not finite`)
  const unit = inputUnit[system][kind]
  const suffix = unit === '1' ? '' : ` ${unit}`
  const amount = fromSI(value, unit)
  for (let digits = 1; digits < 17; digits++) {
    const text = `${Number(amount.toPrecision(digits))}${suffix}`
    if (readsAs(text, kind, value, toSI(0, unit))) return text
  }
  return `${amount + 0}${suffix}`
}
