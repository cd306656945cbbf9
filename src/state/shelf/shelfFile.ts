import type { Issue } from '../../core/model/issue.ts'
import type { PierDocument } from '../../core/model/spec.ts'
import { parseJob } from '../../core/spec/jobFile.ts'
import { onlyTyped } from '../sessionNote.ts'
import type { Shelved } from './shelfRecord.ts'

/** Version of the file that holds all saved piers. */
const fileVersion = 1
/** A file of more is no shelf of ours: some three thousand piers [characters]. */
export const largestShelf = 16 * 1024 * 1024

/** One pier of a file. `asFound` holds a record that this version can't read, so that it is not lost on the way. */
type Entry =
  | Readonly<{ id: string; made: number; changed: number; typed: readonly string[]; job: unknown }>
  | Readonly<{ asFound: unknown }>

const entryOf = (one: Shelved): Entry => {
  if (one.kind !== 'pier') return { asFound: one.raw }
  const { id, made, changed, typed, job } = one.record
  return { id, made, changed, typed, job: JSON.parse(job) as unknown }
}

/** All saved piers as one file. Each job stands in it as a job file does, so that it can be read without this tool. */
export const writeShelf = (piers: readonly Shelved[]): string =>
  `${JSON.stringify({ pierglassShelf: fileVersion, piers: piers.map(entryOf) }, null, 2)}\n`

export type FilePier = Readonly<{ id: string; made: number; changed: number; document: PierDocument }>
export type ShelfFile = Readonly<{ piers: readonly FilePier[]; asFound: readonly Readonly<{ id: string }>[]; issues: readonly Issue[] }>

const issue = (code: string, facts: Partial<Issue> = {}): Issue => ({ code, severity: 'error', path: '', ...facts })
const refused = (...issues: readonly Issue[]): ShelfFile => ({ piers: [], asFound: [], issues })

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
const numberOr = (value: unknown, otherwise: number): number => (typeof value === 'number' && Number.isFinite(value) ? value : otherwise)
const isId = (value: unknown): value is string => typeof value === 'string' && value !== '' && value.length <= 64
const isTexts = (value: unknown): value is readonly string[] => Array.isArray(value) && value.every((one) => typeof one === 'string')

/**
 * Reads a file of saved piers, or one job file. What is wrong with the file as a whole gives no piers; a single pier that can't be read is
 * left out and named by its place in the file.
 * @param now for piers that bring no date [ms since 1970]
 * @param newId for piers that bring no id
 */
export const readShelf = (text: string, now: number, newId: () => string): ShelfFile => {
  if (text.length > largestShelf) return refused(issue('file-too-large', { got: text.length, limit: largestShelf }))
  let data: unknown
  try {
    data = JSON.parse(text.replace(/^\ufeff/, ''))
  } catch {
    return refused(issue('not-a-shelf'))
  }
  if (isObject(data) && Object.hasOwn(data, 'pierglass')) return oneJob(text, now, newId)
  if (!isObject(data) || !Object.hasOwn(data, 'pierglassShelf') || !Array.isArray(data.piers)) return refused(issue('not-a-shelf'))
  const version = data.pierglassShelf
  if (typeof version === 'number' && version > fileVersion) return refused(issue('newer-shelf', { got: version, limit: fileVersion }))
  if (version !== fileVersion) return refused(issue('not-a-shelf'))
  const parts = data.piers.map((entry: unknown, i) => readEntry(entry, `piers.${i + 1}`, now, newId))
  return {
    piers: parts.flatMap((part) => part.piers),
    asFound: parts.flatMap((part) => part.asFound),
    issues: parts.flatMap((part) => part.issues),
  }
}

const oneJob = (text: string, now: number, newId: () => string): ShelfFile => {
  const read = parseJob(text)
  return read.ok ? { ...refused(), piers: [{ id: newId(), made: now, changed: now, document: read.value }] } : refused(...read.issues)
}

function readEntry(entry: unknown, path: string, now: number, newId: () => string): ShelfFile {
  if (!isObject(entry)) return refused(issue('not-a-shelf-entry', { path }))
  if (Object.hasOwn(entry, 'asFound')) {
    const { asFound } = entry
    return isObject(asFound) && isId(asFound.id)
      ? { ...refused(), asFound: [asFound as Readonly<{ id: string }>] }
      : refused(issue('not-a-shelf-entry', { path }))
  }
  const at = (one: Issue): Issue => ({ ...one, path: one.path === '' ? path : `${path}.${one.path}` })
  try {
    const read = parseJob(JSON.stringify(entry.job ?? null))
    if (!read.ok) return refused(...read.issues.map(at))
    const document = isTexts(entry.typed) ? onlyTyped(read.value, entry.typed) : read.value
    const changed = numberOr(entry.changed, now)
    return { ...refused(), piers: [{ id: isId(entry.id) ? entry.id : newId(), made: numberOr(entry.made, changed), changed, document }] }
  } catch {
    return refused(issue('not-a-shelf-entry', { path }))
  }
}
