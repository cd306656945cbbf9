import type { BarGrade, BarSize } from '../../model/spec.ts'
import type { Metres, Pascals, SquareMetres } from '../../units/quantity.ts'
import { type Cited, cited } from '../cited.ts'

export type RoundBar = Readonly<{
  diameter: Cited<Metres>
  area: Cited<SquareMetres> /** Weight per length [N/m]. */
  weight: Cited
  perimeter: Cited<Metres>
}>
const bar = (diameter: number, area: number, weight: number, perimeter: number): RoundBar => ({
  diameter: cited<Metres>(diameter, 'in', 'astm-a615', 'secondary'),
  area: cited<SquareMetres>(area, 'in2', 'astm-a615', 'secondary'),
  weight: cited(weight, 'lb/ft', 'astm-a615', 'secondary'),
  perimeter: cited<Metres>(perimeter, 'in', 'astm-a615', 'secondary'),
})
/** Deformed bars: nominal diameter in, area in2, weight lb/ft, perimeter in. Source: astm-a615 Table 1. */
export const bars: Readonly<Record<BarSize, RoundBar>> = {
  '#3': bar(0.375, 0.11, 0.376, 1.178),
  '#4': bar(0.5, 0.2, 0.668, 1.571),
  '#5': bar(0.625, 0.31, 1.043, 1.963),
  '#6': bar(0.75, 0.44, 1.502, 2.356),
  '#7': bar(0.875, 0.6, 2.044, 2.749),
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: the table's own printed digits
  '#8': bar(1, 0.79, 2.67, 3.142),
}

/** `yield` and `tensile`: specified minimum. `dowelYield`: bending yield strength used in the yield equations. */
export type BarSteel = Readonly<{ yield: Cited<Pascals>; tensile: Cited<Pascals>; dowelYield: Cited<Pascals> }>
const steel = (fy: number, fu: number): BarSteel => ({
  yield: cited<Pascals>(fy, 'ksi', 'astm-a615', 'secondary'),
  tensile: cited<Pascals>(fu, 'ksi', 'astm-a615', 'secondary'),
  // No published table or test gives bending yield of a reinforcing bar; the specified yield is a lower bound of it.
  dowelYield: cited<Pascals>(fy, 'ksi', 'assumption', 'assumed here'),
})
/** Grades, ksi. An unmarked bar counts as the lowest grade. Grade 60 tensile 80 ksi is the lower of two editions (90 to about 2016). Source: astm-a615 Table 2. */
export const barGrades: Readonly<Record<BarGrade, BarSteel>> = { unknown: steel(40, 60), '40': steel(40, 60), '60': steel(60, 80) }

/** Bending yield of a smooth dowel, bolt or drift pin, D at least 3/8 in. Source: nds-2018-app-i Table I1. */
export const boltBendingYield = cited<Pascals>(45, 'ksi', 'nds-2018-app-i', 'secondary')
