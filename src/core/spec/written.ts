import type { PierDocument, PierSpec } from '../model/spec.ts'
import type { UnitId } from '../units/factors.ts'
import { parseQuantity } from '../units/parse.ts'
import type { QuantityKind } from '../units/quantity.ts'
import { allFields } from './fields.ts'
import { valueAt } from './path.ts'

const readsAs = (text: string, quantity: QuantityKind, value: unknown): boolean => {
  const reading = parseQuantity(text, quantity)
  return reading.ok && reading.value === value
}

const quantities: ReadonlyMap<string, QuantityKind> = new Map(
  allFields.flatMap((field) => (field.type === 'number' && field.quantity !== 'count' ? [[field.path, field.quantity] as const] : [])),
)

/** The typed texts that still read as the values they stand for, those of fields not shown at the moment included. */
export function stillWritten(spec: PierSpec, written: PierDocument['written']): PierDocument['written'] {
  return Object.fromEntries(
    Object.entries(written).filter(([path, text]) => {
      const quantity = quantities.get(path)
      return quantity !== undefined && readsAs(text, quantity, valueAt(spec, path))
    }),
  )
}

/** A typed text as the job file keeps it: with its unit, added when a bare number was typed. */
export function withUnit(text: string, quantity: QuantityKind, bare: UnitId): string {
  const trimmed = text.trim()
  return parseQuantity(trimmed, quantity).ok ? trimmed : `${trimmed} ${bare}`
}
