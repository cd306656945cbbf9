import { strToU8 } from 'fflate'
import type { Issue, Result } from '../../core/model/issue.ts'
import type { PierDocument } from '../../core/model/spec.ts'
import { parseJob } from '../../core/spec/jobFile.ts'
import { writeJob } from '../../core/spec/writeJob.ts'
import { crc32 } from '../link.ts'
import { onlyTyped } from '../sessionNote.ts'
import { isThumbnail, type Thumbnail, thumbnailOf } from './thumbnail.ts'

/** Version of a record. A page that meets a higher one shows what it can and writes nothing over it. */
export const recordVersion = 1

/** A saved pier as the browser keeps it: a job file, what of it was typed, and a check of both. Results are never saved. */
export type ShelfRecord = Readonly<{
  id: string
  schema: number
  /** Rises with each saving: what a tab saves must follow what it has seen. */
  revision: number
  /** As in the job; kept beside it for lists. */
  name: string
  note: string
  job: string
  typed: readonly string[]
  /** CRC-32 of the job. */
  check: number
  thumbnail: Thumbnail
  /** When it was first and last saved [ms since 1970]. */
  made: number
  changed: number
}>

type Facts = Pick<ShelfRecord, 'id' | 'revision' | 'made' | 'changed'>
export const recordOf = (document: PierDocument, { id, revision, made, changed }: Facts): ShelfRecord => {
  const job = writeJob(document)
  return {
    id,
    schema: recordVersion,
    revision,
    name: document.name,
    note: document.note,
    job,
    typed: Object.keys(document.written).sort(),
    check: crc32(strToU8(job)),
    thumbnail: thumbnailOf(document.spec),
    made,
    changed,
  }
}

/** What a list may show of anything that lies in the store. */
export type Shelved = Readonly<{ id: string; name: string; note: string; changed: number; thumbnail: Thumbnail | null; raw: unknown }> &
  (
    | Readonly<{ kind: 'pier'; record: ShelfRecord }>
    /** Of a later version of this tool: to look at and to take along, not to change. */
    | Readonly<{ kind: 'newer'; schema: number }>
    | Readonly<{ kind: 'damaged'; issues: readonly Issue[] }>
  )

const textAt = (raw: unknown, key: string): string => {
  const value = typeof raw === 'object' && raw !== null ? (raw as Readonly<Record<string, unknown>>)[key] : undefined
  return typeof value === 'string' ? value : ''
}
const numberAt = (raw: unknown, key: string): number => {
  const value = typeof raw === 'object' && raw !== null ? (raw as Readonly<Record<string, unknown>>)[key] : undefined
  return typeof value === 'number' && Number.isFinite(value) ? value : Number.NaN
}

const issue = (code: string): Issue => ({ code, severity: 'error', path: '' })

/** Sorts one thing from the store: its shape and its check are looked at, not yet what it says. */
export const shelved = (raw: unknown): Shelved => {
  const thumbnail = typeof raw === 'object' && raw !== null && 'thumbnail' in raw && isThumbnail(raw.thumbnail) ? raw.thumbnail : null
  const changed = numberAt(raw, 'changed')
  const about = { id: textAt(raw, 'id'), name: textAt(raw, 'name'), note: textAt(raw, 'note'), changed: changed || 0, thumbnail, raw }
  const schema = numberAt(raw, 'schema')
  if (Number.isInteger(schema) && schema > recordVersion) return { ...about, kind: 'newer', schema }
  const job = textAt(raw, 'job')
  const typed = (raw as Readonly<{ typed?: unknown }> | null)?.typed
  const isWhole =
    Number.isSafeInteger(numberAt(raw, 'revision')) &&
    Number.isFinite(changed) &&
    Number.isFinite(numberAt(raw, 'made')) &&
    Array.isArray(typed) &&
    job !== '' &&
    schema >= 1
  if (!isWhole) return { ...about, kind: 'damaged', issues: [issue('record-incomplete')] }
  if (numberAt(raw, 'check') !== crc32(strToU8(job))) return { ...about, kind: 'damaged', issues: [issue('record-check')] }
  return { ...about, kind: 'pier', record: raw as ShelfRecord }
}

type Parse = (text: string) => Result<PierDocument>

/** The pier of a record, through the same gate as any file. Whatever goes wrong in reading, the record itself stays as it is. */
export const openRecord = (record: ShelfRecord, parse: Parse = parseJob): Result<PierDocument> => {
  try {
    const read = parse(record.job)
    return read.ok ? { ...read, value: onlyTyped(read.value, record.typed) } : read
  } catch (error) {
    return { ok: false, issues: [{ ...issue('record-unreadable'), got: String(error).slice(0, 80) }] }
  }
}
