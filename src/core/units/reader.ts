import { type FormatOptions, formatQuantity, formatText, power } from './format.ts'
import type { QuantityKind, UnitSystem } from './quantity.ts'

export type SayNumber = (value: number, quantity: QuantityKind, options?: FormatOptions) => string

/** How numbers are written for one reader. */
export type Units = Readonly<{
  system: UnitSystem
  /** Number and unit. */
  say: SayNumber
  /** The number alone: the first of a range. */
  bare: SayNumber
  /** A number of a calculation: factors as a plain number, not as a share of a hundred. */
  figure: SayNumber
}>

export const unitsFor = (system: UnitSystem): Units => {
  const say: SayNumber = (value, quantity, options) => formatText(value, quantity, system, options)
  return {
    system,
    say,
    bare: (value, quantity, options) => formatQuantity(value, quantity, system, options).text,
    figure: (value, quantity, options) => {
      if (quantity !== 'ratio') return say(value, quantity, options)
      return Math.abs(value) < 1e6 ? String(Number(value.toPrecision(3))) : power(value)
    },
  }
}
