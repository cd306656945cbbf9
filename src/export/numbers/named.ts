import type { Field } from '../../core/model/field.ts'
import { allFields } from '../../core/spec/fields.ts'
import { formatText } from '../../core/units/format.ts'
import type { QuantityKind } from '../../core/units/quantity.ts'

/** SI unit of each kind of quantity, as the end of a key: `volume_m3`. */
const unitInKey: Readonly<Record<QuantityKind, string>> = {
  length: '_m',
  area: '_m2',
  volume: '_m3',
  weight: '_N',
  force: '_N',
  moment: '_N_m',
  strength: '_Pa',
  pressure: '_Pa',
  unitWeight: '_N_per_m3',
  gradient: '_Pa_per_m',
  angle: '_rad',
  slope: '_rise_per_run',
  ratio: '',
  count: '',
  duration: '_s',
  age: '_s',
  life: '_s',
  temperature: '_degC',
  rain: '_m_per_s',
  speed: '_m_per_s',
  conductivity: '_m_per_s',
  flow: '_m3_per_s',
  dosage: '_m3_per_m3',
  money: '',
}

/** SI unit of a number whose key is just "value". */
export const unitOf = (quantity: QuantityKind): string =>
  unitInKey[quantity].replace(/^_/, '').replaceAll('_per_', '/').replace('N_m', 'N.m') || '1'

/** One number under a key that names its unit. */
export const named = (name: string, value: number, quantity: QuantityKind): Record<string, number> => ({
  [`${name}${unitInKey[quantity]}`]: value,
})

/** The same in words, US and metric. */
export function inWords(value: number, quantity: QuantityKind): Readonly<{ us: string; metric: string }> {
  // A factor in a formula is read as a number, not as a share.
  const plain = quantity === 'ratio' ? String(Number(value.toPrecision(4))) : null
  return { us: plain ?? formatText(value, quantity, 'us'), metric: plain ?? formatText(value, quantity, 'metric') }
}

const quantities: ReadonlyMap<string, QuantityKind> = new Map(
  allFields.flatMap((field: Field) => (field.type === 'number' ? [[field.path, field.quantity] as const] : [])),
)

/** A spec with the unit of every number in its key: `diameter_m`. */
export function withUnits(node: unknown, path = ''): unknown {
  if (typeof node !== 'object' || node === null) return node
  return Object.fromEntries(
    Object.entries(node).map(([key, value]) => {
      const here = path === '' ? key : `${path}.${key}`
      const quantity = quantities.get(here)
      return [quantity === undefined ? key : `${key}${unitInKey[quantity]}`, withUnits(value, here)]
    }),
  )
}
