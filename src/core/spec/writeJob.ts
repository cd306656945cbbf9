import type { Field } from '../model/field.ts'
import type { PierDocument } from '../model/spec.ts'
import { editText } from '../units/editText.ts'
import { fromSI, powerOfTen, type UnitId } from '../units/factors.ts'
import { parseQuantity } from '../units/parse.ts'
import type { QuantityKind } from '../units/quantity.ts'
import { allFields } from './fields.ts'
import { schemaVersion } from './schemaVersion.ts'
import { valueAt, withValueAt } from './path.ts'

/** Fields that a job file holds as text with a unit. */
export const isText = (field: Field) => field.type === 'number' && field.quantity !== 'count'

/** Units in which a number is only shifted, so that it reads back to the last bit. */
const exactUnit: Partial<Readonly<Record<QuantityKind, UnitId>>> = {
  length: 'm',
  area: 'm2',
  volume: 'm3',
  weight: 'N',
  force: 'N',
  strength: 'Pa',
  pressure: 'Pa',
  unitWeight: 'N/m3',
  gradient: 'Pa/m',
  angle: 'rad',
  slope: '%',
  ratio: '%',
  speed: 'm/s',
  rain: 'm/s',
  temperature: 'degC',
  life: 's',
  dosage: 'L/m3',
  money: '1',
}

/** Units besides those of the two systems in which people tell a quantity: water by the gallon and the litre. */
const alsoIn: Partial<Readonly<Record<QuantityKind, readonly UnitId[]>>> = { volume: ['gal', 'L'] }

/** Every digit there is, in a unit that only shifts them; undefined for a quantity without one. */
function everyDigit(value: number, quantity: QuantityKind): string | undefined {
  const unit = exactUnit[quantity]
  if (unit === undefined) return undefined
  const power = powerOfTen[unit] ?? 0
  const [digits = '', exponent] = value.toExponential().split('e')
  return `${power === 0 ? value : `${digits}e${Number(exponent) - power}`} ${unit}`
}

/**
 * A text that reads as the value to the last bit: the shorter of the two systems', US when they tie; where neither does, one with every
 * digit. Where no unit shifts alone, one that reads within 1e-12 of it.
 */
export function shortText(value: number, quantity: QuantityKind): string {
  const us = editText(value, quantity, 'us')
  const metric = editText(value, quantity, 'metric')
  const others = (alsoIn[quantity] ?? []).map((unit) => `${Number(fromSI(value, unit).toPrecision(12))} ${unit}`)
  const byLength = [us, metric, ...others].sort((a, b) => a.length - b.length)
  const isExact = (text: string | undefined): boolean => {
    const reading = parseQuantity(text ?? '', quantity)
    return reading.ok && reading.value === value
  }
  return [...byLength, everyDigit(value, quantity)].find(isExact) ?? byLength[0] ?? us
}

/** A pier, or some of its parts, as the file holds it: quantities as they were typed, else as short texts that read back as the same values. */
const inFile = <T>(pier: T, written: PierDocument['written']): T =>
  allFields.filter(isText).reduce<T>((job, field) => {
    const value = valueAt(pier, field.path)
    if (field.type !== 'number' || typeof value !== 'number') return job
    return withValueAt(job, field.path, written[field.path] ?? shortText(value, field.quantity))
  }, pier)

const someOf = (origins: PierDocument['origins']) => (Object.keys(origins).length === 0 ? {} : { origins })

/** Writes a job file. Origins and other kinds are told only where there is something to tell. */
export function writeJob({ spec, written, origins, otherKinds, name, note }: PierDocument): string {
  const others = otherKinds.map((other) => ({ of: other.of, pier: inFile(other.pier, other.written), ...someOf(other.origins) }))
  const job = {
    pierglass: schemaVersion,
    name,
    note,
    ...someOf(origins),
    ...(others.length === 0 ? {} : { otherKinds: others }),
    pier: inFile(spec, written),
  }
  return `${JSON.stringify(job, null, 2)}\n`
}
