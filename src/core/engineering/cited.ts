import type { Standing } from '../model/worked.ts'
import type { SourceId } from './sources.ts'

/** Units in which the published tables print. Exact in SI: inch, foot, pound (mass), gallon and standard gravity are defined. */
const inch = 0.0254
const foot = 0.3048
const pound = 0.45359237 * 9.80665
/** SI value of one printed unit. */
export const printedUnits = {
  '1': 1,
  in: inch,
  ft: foot,
  yd: 0.9144,
  m: 1,
  mm: 1e-3,
  in2: inch ** 2,
  ft2: foot ** 2,
  in4: inch ** 4,
  in3: inch ** 3,
  ft3: foot ** 3,
  yd3: 0.9144 ** 3,
  m3: 1,
  m2: 1,
  qt: 57.75 * inch ** 3,
  gal: 231 * inch ** 3,
  lb: pound,
  kip: 1000 * pound,
  N: 1,
  kN: 1e3,
  'lb/ft': pound / foot,
  'lb-ft': pound * foot,
  psf: pound / foot ** 2,
  psi: pound / inch ** 2,
  ksi: (1000 * pound) / inch ** 2,
  kPa: 1e3,
  MPa: 1e6,
  Pa: 1,
  'psf/ft': pound / foot ** 3,
  'kPa/m': 1e3,
  pcf: pound / foot ** 3,
  'kN/m3': 1e3,
  deg: Math.PI / 180,
  '%': 0.01,
  mph: 1609.344 / 3600,
  degF: 5 / 9,
} as const
export type PrintedUnit = keyof typeof printedUnits

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
  value: (printed * printedUnits[unit]) as T,
  printed,
  unit,
  source,
  standing,
})
