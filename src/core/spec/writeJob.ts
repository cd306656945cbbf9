import type { Field } from '../model/field.ts'
import type { PierDocument, PierSpec } from '../model/spec.ts'
import { editText } from '../units/editText.ts'
import type { QuantityKind } from '../units/quantity.ts'
import { fields } from './fields.ts'
import { schemaVersion } from './migrate.ts'
import { valueAt, withValueAt } from './path.ts'

/** Fields that a job file holds as text with a unit. */
export const isText = (field: Field) => field.type === 'number' && field.quantity !== 'count'

/** The shorter of the two systems' texts; US when they tie. */
export function shortText(value: number, quantity: QuantityKind): string {
  const us = editText(value, quantity, 'us')
  const metric = editText(value, quantity, 'metric')
  return metric.length < us.length ? metric : us
}

/** Writes a job file: quantities as they were typed, else as short texts that read back as the same values. */
export function writeJob(document: PierDocument): string {
  const { spec, written, name, note } = document
  const pier = fields.filter(isText).reduce<PierSpec>((job, field) => {
    const value = valueAt(spec, field.path)
    if (field.type !== 'number' || typeof value !== 'number') return job
    return withValueAt(job, field.path, written[field.path] ?? shortText(value, field.quantity))
  }, spec)
  return `${JSON.stringify({ pierglass: schemaVersion, name, note, pier }, null, 2)}\n`
}
