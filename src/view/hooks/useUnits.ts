import { useMemo } from 'react'
import { type FormatOptions, formatQuantity, formatText, power } from '../../core/units/format.ts'
import type { QuantityKind, UnitSystem } from '../../core/units/quantity.ts'
import { usePier } from './usePier.ts'

export type Say = (value: number, quantity: QuantityKind, options?: FormatOptions) => string
export type Units = Readonly<{
  system: UnitSystem
  /** Number and unit. */
  say: Say
  /** The number alone: the first of a range. */
  bare: Say
  /** A number of a calculation: factors as a plain number, not as a share of a hundred. */
  figure: Say
}>

const unitsFor = (system: UnitSystem): Units => {
  const say: Say = (value, quantity, options) => formatText(value, quantity, system, options)
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

/** How numbers are written for this reader. */
export const useUnits = (): Units => {
  const system = usePier((state) => state.view.units)
  return useMemo(() => unitsFor(system), [system])
}
