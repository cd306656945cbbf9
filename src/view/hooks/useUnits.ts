import { useMemo } from 'react'
import { type FormatOptions, formatText } from '../../core/units/format.ts'
import type { QuantityKind, UnitSystem } from '../../core/units/quantity.ts'
import { usePier } from './usePier.ts'

export type Say = (value: number, quantity: QuantityKind, options?: FormatOptions) => string

/** How numbers are written for this reader. */
export const useUnits = (): Readonly<{ system: UnitSystem; say: Say }> => {
  const system = usePier((state) => state.view.units)
  return useMemo(() => ({ system, say: (value, quantity, options) => formatText(value, quantity, system, options) }), [system])
}
