import { powerOfTen, toSI, type UnitId, unitsOf } from './factors.ts'
import type { QuantityKind } from './quantity.ts'
import { plainText, readNumber } from './readNumber.ts'
import { unitNamed } from './spellings.ts'

export type ReadingCode =
  | 'empty'
  | 'too-long'
  | 'not-a-number'
  | 'not-finite'
  | 'missing-unit'
  | 'unknown-unit'
  | 'wrong-unit'
  | 'two-units'
  | 'not-whole'
export type Reading = Readonly<{ ok: true; value: number }> | Readonly<{ ok: false; code: ReadingCode }>

/** The longest text that is looked at [characters]. */
export const longestText = 64

const refuse = (code: ReadingCode): Reading => ({ ok: false, code })
const read = (value: number): Reading => (Number.isFinite(value) ? { ok: true, value: value + 0 } : refuse('not-finite'))

const infinite = /^[+-]? *(?:nan|inf(?:inity)?|∞)/i
const numberThenUnit = /^([+-]?) *((?:\d|[.,]\d)[\d.,\u202f/ -]*?(?:e[+-]?\d+)?) *([^\d.,\u202f/ -].*)?$/i
const feetInches = /^([+-]?) *(\d+) *(?:'|ft\.?|foot|feet) *-? *(\d[\d./ -]*?) *(?:"|in\.?|inch|inches)?$/i
const horizontalFirst = /^([\d.]+) *h? *: *([\d.]+) *v?$/i
const verticalFirst = /^([\d.]+) *v *: *([\d.]+) *h$/i

/**
 * Reads one quantity as people write it and gives its SI value.
 *
 * @param text up to 64 characters: "18 in", `1'-6 1/2"`, "45,7 cm", "3,500 psi", "10H:1V"; a minus sign is read, bounds are not our matter
 * @param kind what it must be; a unit of another kind is refused
 * @param bareUnit unit of a bare number (input fields); left out, a bare number is refused (job file) unless it is a count
 * @returns the value in coherent SI, never NaN, infinite or negative zero, or a code that says why not
 */
export function parseQuantity(text: string, kind: QuantityKind, bareUnit?: UnitId): Reading {
  if (text.length > longestText) return refuse('too-long')
  const plain = plainText(text)
  if (plain === '') return refuse('empty')
  if (infinite.test(plain)) return refuse('not-finite')
  const special = kind === 'length' ? fromFeetInches(plain) : kind === 'slope' ? fromRatio(plain) : undefined
  if (special !== undefined) return special

  const parts = numberThenUnit.exec(plain)
  if (!parts) return refuse('not-a-number')
  const [, sign, digits = '', word] = parts
  const magnitude = readNumber(digits)
  if (magnitude === undefined) return refuse('not-a-number')
  if (!Number.isFinite(magnitude)) return refuse('not-finite')
  const unit = word === undefined ? (bareUnit ?? (hasNoUnit(kind) ? '1' : undefined)) : unitNamed(word)
  if (unit === undefined) return refuse(word === undefined ? 'missing-unit' : isTwoUnits(word) ? 'two-units' : 'unknown-unit')
  if (!unitsOf[kind].includes(unit)) return refuse('wrong-unit')
  if (kind === 'count' && !Number.isInteger(magnitude)) return refuse('not-whole')
  const way = sign === '-' ? -1 : 1
  if (kind === 'slope' && unit === 'deg') return fromDegrees(way * magnitude)
  const shift = powerOfTen[unit]
  return read(shift === undefined ? toSI(way * magnitude, unit) : way * (readNumber(digits, shift) ?? Number.NaN))
}

/** Counts and sums of money are bare numbers everywhere. */
const hasNoUnit = (kind: QuantityKind): boolean => unitsOf[kind].every((unit) => unit === '1')

/** Feet and inches in one length; undefined when the text is not of that form. */
function fromFeetInches(plain: string): Reading | undefined {
  const parts = feetInches.exec(plain)
  if (!parts) return undefined
  const inches = readNumber(parts[3] ?? '')
  if (inches === undefined) return refuse('not-a-number')
  return read(toSI((parts[1] === '-' ? -1 : 1) * (Number(parts[2]) * 12 + inches), 'in'))
}

/** "10:1" and "10H:1V" are run to rise, "1V:10H" rise to run; undefined when the text is not a ratio. */
function fromRatio(plain: string): Reading | undefined {
  const upright = verticalFirst.exec(plain)
  const level = horizontalFirst.exec(plain)
  if (!upright && !level) return undefined
  const rise = readNumber((upright ? upright[1] : level?.[2]) ?? '')
  const run = readNumber((upright ? upright[2] : level?.[1]) ?? '')
  return rise === undefined || run === undefined ? refuse('not-a-number') : read(rise / run)
}

/** A slope angle of 90 degrees or more has no rise over run. */
const fromDegrees = (degrees: number): Reading =>
  Math.abs(degrees) < 90 ? read(Math.tan((degrees * Math.PI) / 180)) : refuse('not-finite')

/** "in 457 mm", "ft lb": a unit of ours and then more of the same. */
function isTwoUnits(rest: string): boolean {
  const [, first = '', more = ''] = /^([^\d ]+\d?) *([+-]? *[\d.]*.*)$/.exec(rest) ?? []
  if (unitNamed(first) === undefined || more === '') return false
  return /^[+-]? *\.?\d/.test(more) || unitNamed(more) !== undefined
}
