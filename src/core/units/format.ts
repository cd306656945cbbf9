import { fromSI, inputUnit, type UnitId } from './factors.ts'
import { lengthText } from './formatLength.ts'
import { decimals, significant } from './numerals.ts'
import type { QuantityKind, UnitSystem } from './quantity.ts'

export type FormatOptions = Readonly<{
  /** 'screen' says 18 in, 457 mm; 'sheet' writes as a drawing does: 18", 3'-0", and millimetres without a sign. Default 'screen'. */
  style?: 'screen' | 'sheet'
  /** US lengths of a foot and more in feet and inches. Left out: on the sheet from 36 in up, on screen never. */
  feetInches?: boolean
  /** Fractions of an inch to round to. Left out: 8, and 16 under an inch. */
  fraction?: 8 | 16
  /** Write it in this unit instead of the system's own: 'yd3', 'kip', 'kPa', 'cm'. */
  unit?: UnitId
}>

/** `text` is the number, `unit` what to set after it; '' when the text carries its own marks. */
export type Formatted = Readonly<{ text: string; unit: string }>

type Digits = (amount: number, system: UnitSystem) => string
const three: Digits = (amount, system) => significant(amount, 3, system)
const fourFromThousand: Digits = (amount, system) => significant(amount, Math.abs(amount) >= 1000 ? 4 : 3, system)
const whole: Digits = (amount, system) => decimals(amount, 0, system)
/** Conductivities lie twelve powers of ten apart: no more digits than one, and the power. */
export const power = (amount: number): string => {
  const [digit = '0', exponent = '0'] = (amount + 0).toExponential(0).split('e')
  return digit === '0' || Number(exponent) === 0
    ? digit
    : `${digit} × 10${[...String(Number(exponent))].map((sign) => raised[sign] ?? '').join('')}`
}
const raised: Readonly<Record<string, string>> = {
  '-': '⁻',
  '0': '⁰',
  '1': '¹',
  '2': '²',
  '3': '³',
  '4': '⁴',
  '5': '⁵',
  '6': '⁶',
  '7': '⁷',
  '8': '⁸',
  '9': '⁹',
}
const tenth: Digits = (amount, system) => decimals(amount, 1, system, 'trim')

/** Digits that mean something, per kind: no more than the inputs carry. */
const digits: Readonly<Record<QuantityKind, Digits>> = {
  length: three,
  area: three,
  volume: (amount, system) => (Math.abs(amount) < 0.1 ? three(amount, system) : decimals(amount, Math.abs(amount) < 9.995 ? 2 : 1, system)),
  weight: fourFromThousand,
  force: fourFromThousand,
  moment: fourFromThousand,
  strength: fourFromThousand,
  pressure: fourFromThousand,
  unitWeight: three,
  gradient: three,
  angle: tenth,
  slope: tenth,
  ratio: tenth,
  count: whole,
  duration: three,
  age: tenth,
  life: tenth,
  temperature: whole,
  rain: three,
  speed: three,
  conductivity: power,
  flow: three,
  dosage: three,
  money: whole,
}

const signs: Partial<Readonly<Record<UnitId, string>>> = { deg: '°', degC: '°C', degF: '°F', '1': '', 'N-m': 'N·m', 'kN-m': 'kN·m' }
const printed = (unit: UnitId): string => signs[unit] ?? unit.replace(/2$/, '²').replace(/3$/, '³').replace(/2\//, '²/')

/** Units set close to their number. */
const close = new Set(['', '°', '%', '"', "'"])

/**
 * Writes an SI value as the trade does, rounded for reading. Never use the result as a value: `editText` is for that.
 *
 * @param value SI, finite; throws when it is not (a broken invariant)
 */
export function formatQuantity(value: number, kind: QuantityKind, system: UnitSystem, options: FormatOptions = {}): Formatted {
  if (!Number.isFinite(value)) throw new RangeError(`formatQuantity: ${value} is not finite`)
  if (kind === 'length' && options.unit === undefined) return lengthText(value, system, options)
  const unit = options.unit ?? inputUnit[system][kind]
  const amount = fromSI(value, unit)
  const text =
    unit === 'm3' && Math.abs(amount) >= 0.01 ? decimals(amount, Math.abs(amount) < 9.9995 ? 3 : 2, system) : digits[kind](amount, system)
  return { text, unit: printed(unit) }
}

/** Less than this, steel as a rule, is too little to be said in the units of concrete [m3]. */
const littleVolume = 0.001

/**
 * The same in one piece: "18 in", "3'-0\"", "2,566 lb", "8%". A little volume, of steel say, is written in cubic inches or in litres
 * unless a unit is asked for.
 */
export function formatText(value: number, kind: QuantityKind, system: UnitSystem, options: FormatOptions = {}): string {
  const isLittle = kind === 'volume' && options.unit === undefined && value !== 0 && Math.abs(value) < littleVolume
  const { text, unit } = formatQuantity(value, kind, system, isLittle ? { ...options, unit: system === 'us' ? 'in3' : 'L' } : options)
  return close.has(unit) ? `${text}${unit}` : `${text} ${unit}`
}
