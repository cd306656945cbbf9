import { strToU8 } from 'fflate'
import type { AnyDocument, DocumentKind, ReadyKind, SmallDrawing } from '../../core/documents/documentKind.ts'
import { documentKind, documentKinds } from '../../core/documents/index.ts'
import type { Issue, Result } from '../../core/model/issue.ts'
import type { Role } from '../../core/model/solid.ts'
import { crc32 } from './link.ts'
import { recordVersion } from './port.ts'
import { isId, isTexts, isTime, numberAt, textAt, valueIn } from './stored.ts'

/** A saved document as the browser keeps it: a file of it, what of it was typed, and a check. Results are never saved. */
export type ShelfRecord = Readonly<{
  id: string
  /** Id of its kind; not there in records from before there were kinds, which hold piers. */
  of?: string
  schema: number
  /** Rises with each saving: what a tab saves must follow what it has seen. */
  revision: number
  /** As in the file; kept beside it for lists. */
  name: string
  note: string
  /** The file. */
  job: string
  typed: readonly string[]
  /** CRC-32 of the file. */
  check: number
  thumbnail: SmallDrawing | null
  /** When it was first and last saved [ms since 1970]. */
  made: number
  changed: number
}>

type Facts = Pick<ShelfRecord, 'id' | 'revision' | 'made' | 'changed'>
export const recordOf = <D extends AnyDocument>(kind: ReadyKind<D>, document: D, { id, revision, made, changed }: Facts): ShelfRecord => {
  const job = kind.write(document)
  return {
    id,
    of: kind.id,
    schema: recordVersion,
    revision,
    name: document.name,
    note: document.note,
    job,
    typed: kind.typed(document),
    check: crc32(strToU8(job)),
    thumbnail: kind.thumbnail?.(document) ?? null,
    made,
    changed,
  }
}

const roles: ReadonlySet<string> = new Set<Role>([
  'topsoil',
  'soil',
  'soil-lower',
  'backfill',
  'granular',
  'gravel',
  'mulch',
  'dry-mix',
  'concrete',
  'flowable-fill',
  'wood',
  'bar',
  'steel',
])
const isNumbers = (value: unknown): value is readonly number[] => Array.isArray(value) && value.every((one) => Number.isFinite(one))

/** Only what can be drawn is taken from a store. */
export const isThumbnail = (value: unknown): value is SmallDrawing => {
  const box = valueIn(value, 'box')
  const bodies = valueIn(value, 'bodies')
  return (
    isNumbers(box) &&
    box.length === 4 &&
    (box[2] ?? 0) > 0 &&
    (box[3] ?? 0) > 0 &&
    Array.isArray(bodies) &&
    bodies.every((body: unknown) => Array.isArray(body) && body.length === 2 && roles.has(String(body[0])) && isNumbers(body[1]))
  )
}

/** What a list may show of anything that lies in the store. `changed` is null where no date can be shown. */
export type Shelved = Readonly<{
  id: string
  name: string
  note: string
  changed: number | null
  thumbnail: SmallDrawing | null
  raw: unknown
}> &
  (
    | Readonly<{ kind: 'whole'; of: DocumentKind; record: ShelfRecord }>
    /** Of a later version of this tool: to look at and to take along, not to change. */
    | Readonly<{ kind: 'newer' }>
    | Readonly<{ kind: 'damaged'; issues: readonly Issue[] }>
  )

const issue = (code: string): Issue => ({ code, severity: 'error', path: '' })

/** Sorts one thing from the store: its shape and its check are looked at, not yet what it says. */
export const shelved = (raw: unknown, kinds: readonly DocumentKind[] = documentKinds): Shelved => {
  const drawing = valueIn(raw, 'thumbnail')
  const changed = valueIn(raw, 'changed')
  const about = {
    id: textAt(raw, 'id'),
    name: textAt(raw, 'name'),
    note: textAt(raw, 'note'),
    changed: isTime(changed) ? changed : null,
    thumbnail: isThumbnail(drawing) ? drawing : null,
    raw,
  }
  const schema = numberAt(raw, 'schema')
  if (Number.isInteger(schema) && schema > recordVersion) return { ...about, kind: 'newer' }
  const job = textAt(raw, 'job')
  const isWhole =
    isId(valueIn(raw, 'id')) &&
    Number.isSafeInteger(numberAt(raw, 'revision')) &&
    isTime(changed) &&
    isTime(valueIn(raw, 'made')) &&
    isTexts(valueIn(raw, 'typed')) &&
    job !== '' &&
    schema >= 1
  if (!isWhole) return { ...about, kind: 'damaged', issues: [issue('record-incomplete')] }
  if (numberAt(raw, 'check') !== crc32(strToU8(job))) return { ...about, kind: 'damaged', issues: [issue('record-check')] }
  const of = documentKind(valueIn(raw, 'of'), kinds)
  return of ? { ...about, kind: 'whole', of, record: raw as ShelfRecord } : { ...about, kind: 'newer' }
}

/** The document of a record, through the same gate as any file. Whatever goes wrong in reading, the record itself stays as it is. */
export const openRecord = <D extends AnyDocument>(kind: Pick<ReadyKind<D>, 'parse' | 'onlyTyped'>, record: ShelfRecord): Result<D> => {
  try {
    const read = kind.parse(record.job)
    return read.ok ? { ...read, value: kind.onlyTyped(read.value, record.typed) } : read
  } catch (error) {
    return { ok: false, issues: [{ ...issue('record-unreadable'), got: String(error).slice(0, 80) }] }
  }
}

/** Does this very document lie in the record? One that an older version wrote is read first. */
export const recordHolds = async (kind: DocumentKind, record: ShelfRecord, document: AnyDocument): Promise<boolean> => {
  const typed = kind.typed(document).join()
  if (typed !== [...record.typed].sort().join()) return false
  const text = kind.write(document)
  if (record.job === text) return true
  const read = openRecord({ parse: (await kind.reader()).parse, onlyTyped: kind.onlyTyped }, record)
  return read.ok && kind.write(read.value) === text
}
