import { useMemo } from 'react'
import { type Units, unitsFor } from '../../core/units/reader.ts'
import { usePier } from './usePier.ts'

/** How numbers are written for this reader. */
export const useUnits = (): Units => {
  const system = usePier((state) => state.view.units)
  return useMemo(() => unitsFor(system), [system])
}
