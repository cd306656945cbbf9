import type { Field } from '../../core/model/field.ts'
import { allFields } from '../../core/spec/fields.ts'
import type { QuantityKind } from '../../core/units/quantity.ts'
import { wordsOf } from '../../words/index.ts'
import { inWords } from './named.ts'

/** The heads of the columns. `where` is the path into the result; ids stand for places in a list. */
const columns = ['group', 'where', 'name', 'value', 'unit', 'us', 'metric', 'standing', 'sources'] as const
type Row = Readonly<Partial<Record<(typeof columns)[number], string>>>
type Node = Readonly<Record<string, unknown>>
type Plain = string | number | boolean | null
/** Where a value stands: the top key of the result, the path below it, and what the nearest named thing above it is called. */
type Place = Readonly<{ group: string; path: readonly string[]; name: string }>

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && !Array.isArray(value)
const isPlain = (value: unknown): value is Plain => value !== undefined && (value === null || typeof value !== 'object')

/**
 * The result of `resultJson` as a table, one number or word a row, in RFC 4180 form: the same content, so that nothing is in one
 * and not in the other. Starts with a byte order mark, by which spreadsheets know UTF-8.
 */
export function resultCsv(result: unknown): string {
  const parts = isNode(result) ? partNames(result) : new Map<string, string>()
  const rows = isNode(result) ? Object.entries(result).flatMap(([group, value]) => rowsOf(value, { group, path: [], name: '' }, parts)) : []
  const lines = [columns.join(','), ...rows.map((row) => columns.map((column) => cell(row[column] ?? '')).join(','))]
  return `\uFEFF${lines.join('\r\n')}\r\n`
}

/** Names of the zones by id, since quantities speak of them by id alone. */
function partNames(result: Node): Map<string, string> {
  const zones = Array.isArray(result.zones) ? result.zones.filter(isNode) : []
  return new Map(zones.map((zone) => [String(zone.id), String(zone.label)]))
}

function rowsOf(value: unknown, place: Place, parts: ReadonlyMap<string, string>): Row[] {
  if (isPlain(value)) return [leaf(value, place)]
  if (Array.isArray(value)) {
    if (value.every(isPlain)) return value.length === 0 ? [] : [leaf(value.map(written).join('; '), place)]
    return value.flatMap((one, i) => rowsOf(one, { ...place, path: [...place.path, idOf(one) ?? String(i + 1)] }, parts))
  }
  return isNode(value) ? nodeRows(value, place, parts) : []
}

/** Said in other columns, or by the path. */
const silent = new Set(['text', 'label', 'id', 'symbol', 'standing', 'sources', 'value', 'unit', 'quantity'])

function nodeRows(node: Node, place: Place, parts: ReadonlyMap<string, string>): Row[] {
  const name = calledBy(node, parts) ?? place.name
  const rows: Row[] = []
  if (isPlain(node.value)) {
    const { us, metric } = isNode(node.text) ? node.text : {}
    rows.push({
      ...leaf(node.value, { ...place, name }),
      unit: written(node.unit ?? ''),
      us: written(us ?? ''),
      metric: written(metric ?? ''),
    })
  }
  for (const [key, value] of Object.entries(node)) {
    if (silent.has(key) || value === undefined || value === name) continue
    rows.push(...rowsOf(value, { ...place, path: [...place.path, key], name }, parts))
  }
  const [first, ...others] = rows
  return first ? [{ ...backing(node), ...first }, ...others] : []
}

function calledBy(node: Node, parts: ReadonlyMap<string, string>): string | undefined {
  const said = node.label ?? node.name ?? (typeof node.id === 'string' ? parts.get(node.id) : undefined)
  return typeof said === 'string' ? said : undefined
}

/** How well the numbers of a node were verified, and what they rest on. */
const backing = (node: Node): Row => ({
  ...(typeof node.standing === 'string' ? { standing: node.standing } : {}),
  ...(Array.isArray(node.sources) ? { sources: node.sources.map(String).join('; ') } : {}),
})

const inputs: ReadonlyMap<string, Field> = new Map(allFields.map((field) => [field.path, field]))

function leaf(value: Plain, { group, path, name }: Place): Row {
  const labels: Readonly<Record<string, Readonly<{ label: string }>>> = wordsOf('fields')
  // A key may give its unit to all that is under it: `by_m.concrete`.
  const key =
    path
      .slice(-2)
      .reverse()
      .find((one) => unitEnd.test(one)) ??
    path[path.length - 1] ??
    group
  const unit = typeof value === 'number' ? (unitEnd.exec(key)?.[1] ?? '') : ''
  const input = group === 'spec' ? inputs.get(path.join('.').replace(unitEnd, '')) : undefined
  const kind = input?.type === 'number' ? input.quantity : kindOf(unit, key)
  const says = typeof value === 'number' && kind !== undefined ? inWords(value, kind) : {}
  return {
    group,
    where: path.join('.'),
    name: input ? (labels[input.path]?.label ?? name) : name,
    value: written(value),
    unit: unit.replaceAll('_per_', '/'),
    ...says,
  }
}

/** Units that end a key: `volume_m3`, `unitWeight_N_per_m3`. */
const unitEnd = /_((?:N|Pa|m3|m|rise)_per_(?:m3|m|s|run)|m2|m3|m|N|Pa|rad|s|degC|lb)$/

/** What a number is, where its unit leaves no doubt, or its name tells a weight from a force. */
function kindOf(unit: string, key: string): QuantityKind | undefined {
  if (unit === 'N') return /weight/i.test(key) ? 'weight' : 'force'
  return ({ m: 'length', m2: 'area', m3: 'volume', rad: 'angle' } as const)[unit]
}

const idOf = (value: unknown): string | undefined => {
  if (!isNode(value)) return undefined
  const id = value.id ?? value.code ?? value.side ?? value.symbol
  return typeof id === 'string' ? id : undefined
}

const written = (value: unknown): string => (value === null ? '' : String(value))

/**
 * What a spreadsheet would take for a formula is set behind an apostrophe; numbers are left alone. Spreadsheets skip blanks before
 * the sign, start anew after a line break, and read the wide forms of East Asian keyboards as the signs themselves.
 */
const formula = /^[\s\p{Cc}\p{Cf}]*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20]|^[\t\r]/mu
const disarmed = (text: string): string => (formula.test(text) && !Number.isFinite(Number(text)) ? `'${text}` : text)

const cell = (value: string): string => {
  const plain = disarmed(value)
  return /[",;\r\n]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain
}
