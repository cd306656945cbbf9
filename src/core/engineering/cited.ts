import type { Standing } from '../model/worked.ts'
import { type Factor, factors } from '../units/factors.ts'
import type { SourceId } from './sources.ts'

const poundForce = factors.lb.num
/** SI value of the units in which published tables print; those of units/factors.ts and a few that only tables use. */
export const printedUnits = {
  ...factors,
  in4: { num: 127 ** 4, den: 5000 ** 4 },
  'lb/ft': { num: poundForce * 1250, den: 381 },
  'lb-ft': { num: poundForce * 381, den: 1250 },
  'lb/yd3': { num: poundForce * factors.yd3.den, den: factors.yd3.num },
  /** Statute mile per hour [m/s]. */
  mph: { num: 1397, den: 3125 },
  'cm/h': { num: 1, den: 360e3 },
} as const satisfies Readonly<Record<string, Factor>>
export type PrintedUnit = keyof typeof printedUnits

/** SI value of `printed` units. */
export const fromPrinted = (printed: number, unit: PrintedUnit): number =>
  ((printed - zeroOf(unit)) * printedUnits[unit].num) / printedUnits[unit].den
/** How many printed units an SI value is: formulas that fix their units take their inputs through this. */
export const toPrinted = (value: number, unit: PrintedUnit): number =>
  (value * printedUnits[unit].den) / printedUnits[unit].num + zeroOf(unit)
/** The unit's reading at the SI zero: 32 for degrees Fahrenheit. */
const zeroOf = (unit: PrintedUnit): number => (printedUnits as Readonly<Record<PrintedUnit, Factor>>)[unit].zero ?? 0

/** A printed figure, converted once: SI `value` for the formulas, `printed` digits and `unit` for the record, and where it stands. */
export type Cited<T extends number = number> = Readonly<{
  value: T
  printed: number
  unit: PrintedUnit
  source: SourceId
  standing: Standing
}>

/** Loads one printed figure. `printed` in `unit`; the result's `value` in SI. */
export const cited = <T extends number = number>(printed: number, unit: PrintedUnit, source: SourceId, standing: Standing): Cited<T> => ({
  value: fromPrinted(printed, unit) as T,
  printed,
  unit,
  source,
  standing,
})
