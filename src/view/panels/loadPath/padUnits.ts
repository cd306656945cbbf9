import { formatQuantity } from '../../../core/units/format.ts'
import type { UnitId } from '../../../core/units/factors.ts'
import type { QuantityKind, UnitSystem } from '../../../core/units/quantity.ts'
import type { Term, Worked } from '../../../core/model/worked.ts'

/** Units of one line of a calculation, chosen so that its numbers can be multiplied as they stand. */
export type PadUnits = Partial<Readonly<Record<QuantityKind, UnitId>>>

const perFoot: ReadonlySet<QuantityKind> = new Set(['pressure', 'unitWeight', 'gradient', 'area', 'volume'])

/** Units that a formula is written for, in brackets behind it: "(psi, in)". Such a formula holds in no others. */
const writtenFor = /\(\\mathrm\{([^}]*)\}\)/

/** The system that the numbers of a formula are put in with: the reader's, or the one that it is written for. */
export const padSystem = ({ formula }: Pick<Worked, 'formula'>, system: UnitSystem): UnitSystem =>
  writtenFor.test(formula) ? 'us' : system

/** Lengths go with what stands beside them: feet with psf and pcf, inches with psi; metres with kPa, millimetres with MPa and newtons. */
export function padUnits({ formula, inputs, quantity }: Pick<Worked, 'formula' | 'inputs' | 'quantity'>, system: UnitSystem): PadUnits {
  const note = writtenFor.exec(formula)?.[1]
  const present = [quantity, ...inputs.map((term) => term.quantity)]
  const isStrength = present.includes('strength')
  const isLong = note !== undefined ? /\bft\b/.test(note) : !isStrength && present.some((one) => perFoot.has(one))
  return system === 'us'
    ? { length: isLong ? 'ft' : 'in', area: isStrength ? 'in2' : 'ft2', ratio: '1' }
    : { length: isLong ? 'm' : 'mm', area: isStrength ? 'mm2' : 'm2', weight: 'kN', ratio: '1', ...(isStrength ? { force: 'N' } : {}) }
}

export type PadNumber = Readonly<{ text: string; unit: string }>

/** A number of a calculation, in the units of its line. */
export function padNumber(value: number, quantity: QuantityKind, units: PadUnits, system: UnitSystem): PadNumber {
  if (quantity === 'ratio') return { text: String(Number(value.toPrecision(3))), unit: '' }
  const unit = units[quantity]
  const { text, unit: sign } = formatQuantity(value, quantity, system, unit === undefined ? {} : { unit })
  return { text, unit: sign }
}

const raised: Readonly<Record<string, string>> = { '²': '^2', '³': '^3' }

/** The same as TeX: digits grouped as they are read, the unit upright. */
export function padTex({ text, unit }: PadNumber): string {
  const digits = text
    .replace(/,/g, '{,}')
    .replace(/[\u00a0\u2009\u202f]/g, '\\,')
    .replace(/[\u2212\u2013]/g, '-')
  if (unit === '') return digits
  if (unit === '°') return `${digits}^\\circ`
  if (unit === '%') return `${digits}\\,\\%`
  return `${digits}\\,\\mathrm{${unit.replace(/[²³]/g, (sign) => `}${raised[sign]}\\mathrm{`)}}`.replaceAll('\\mathrm{}', '')
}

export const termNumber = (term: Term, units: PadUnits, system: UnitSystem): PadNumber =>
  padNumber(term.value, term.quantity, units, system)
