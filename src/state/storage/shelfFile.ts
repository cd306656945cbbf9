import type { AnyDocument, DocumentKind } from '../../core/documents/documentKind.ts'
import { documentKind, documentKinds } from '../../core/documents/index.ts'
import { pierKind } from '../../core/documents/pier.ts'
import type { Issue, Result } from '../../core/model/issue.ts'
import type { Shelved } from './record.ts'
import { isId, isTexts, isTime, rawText } from './stored.ts'

/** Version of the file that holds all saved documents. */
const fileVersion = 1
/** A file of more is no shelf of ours: some three thousand piers [characters]. */
export const largestShelf = 16 * 1024 * 1024

/** One document of a file; `of` is its kind where it is no pier. `asFound` holds a record that this version can't read, so that it is not lost on the way. */
type Entry =
  | Readonly<{ id: string; of?: string; made: number; changed: number; typed: readonly string[]; job: unknown }>
  | Readonly<{ asFound: unknown }>

const entryOf = (one: Shelved): Entry => {
  try {
    if (one.kind !== 'whole') return { asFound: JSON.parse(rawText(one.raw)) as unknown }
    const { id, made, changed, typed, job } = one.record
    return { id, ...(one.of.id === pierKind.id ? {} : { of: one.of.id }), made, changed, typed, job: JSON.parse(job) as unknown }
  } catch {
    return { asFound: rawText(one.raw) }
  }
}

/** All that is saved as one file. Each document stands in it as its own file does, so that it can be read without this tool. */
export const writeShelf = (piers: readonly Shelved[]): string =>
  `${JSON.stringify({ pierglassShelf: fileVersion, piers: piers.map(entryOf) }, null, 2)}\n`

export type FilePier = Readonly<{ id: string; of: DocumentKind; made: number; changed: number; document: AnyDocument }>
export type ShelfFile = Readonly<{ piers: readonly FilePier[]; asFound: readonly Readonly<{ id: string }>[]; issues: readonly Issue[] }>

/** For documents that bring no date or no id [ms since 1970]. */
export type Made = Readonly<{ now: number; newId: () => string; kinds?: readonly DocumentKind[] }>

const issue = (code: string, facts: Partial<Issue> = {}): Issue => ({ code, severity: 'error', path: '', ...facts })
const refused = (...issues: readonly Issue[]): ShelfFile => ({ piers: [], asFound: [], issues })

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** The kind that a file's data belongs to, by the key that its version stands under. */
const kindOfFile = (data: unknown, kinds: readonly DocumentKind[]): DocumentKind | undefined =>
  isObject(data) ? kinds.find(({ fileMark }) => Object.hasOwn(data, fileMark)) : undefined

/**
 * Reads the file of one document, whatever its kind. A text of no kind is read as a pier, which says what is wrong with it.
 * @param text as the file holds it; nothing of it was looked at before
 */
export const readDocument = async (
  text: string,
  kinds: readonly DocumentKind[] = documentKinds,
): Promise<Readonly<{ of: DocumentKind; read: Result<AnyDocument> }>> => {
  let of: DocumentKind | undefined
  try {
    of = kindOfFile(JSON.parse(text.replace(/^\ufeff/, '')), kinds)
  } catch {
    // The reader says where.
  }
  const kind = of ?? kinds[0] ?? pierKind
  return { of: kind, read: (await kind.reader()).parse(text) }
}

/**
 * Reads a file of saved documents, or the file of one. What is wrong with the file as a whole gives none; a single one that can't be read
 * is left out and named by its place in the file.
 */
export const readShelf = async (text: string, made: Made): Promise<ShelfFile> => {
  if (text.length > largestShelf) return refused(issue('file-too-large', { got: text.length, limit: largestShelf }))
  let data: unknown
  try {
    data = JSON.parse(text.replace(/^\ufeff/, ''))
  } catch {
    return refused(issue('not-a-shelf'))
  }
  if (kindOfFile(data, made.kinds ?? documentKinds)) return oneDocument(text, made)
  if (!isObject(data) || !Object.hasOwn(data, 'pierglassShelf') || !Array.isArray(data.piers)) return refused(issue('not-a-shelf'))
  const version = data.pierglassShelf
  if (typeof version === 'number' && version > fileVersion) return refused(issue('newer-shelf', { got: version, limit: fileVersion }))
  if (version !== fileVersion) return refused(issue('not-a-shelf'))
  const parts: ShelfFile[] = []
  for (const [i, entry] of data.piers.entries()) parts.push(await readEntry(entry, `piers.${i + 1}`, made))
  return {
    piers: parts.flatMap((part) => part.piers),
    asFound: parts.flatMap((part) => part.asFound),
    issues: parts.flatMap((part) => part.issues),
  }
}

/** A file of one document is a copy: what comes from it has an id of its own. */
const oneDocument = async (text: string, { now, newId, kinds }: Made): Promise<ShelfFile> => {
  const { of, read } = await readDocument(text, kinds)
  return read.ok ? { ...refused(), piers: [{ id: newId(), of, made: now, changed: now, document: read.value }] } : refused(...read.issues)
}

const readEntry = async (entry: unknown, path: string, { now, newId, kinds }: Made): Promise<ShelfFile> => {
  if (!isObject(entry)) return refused(issue('not-a-shelf-entry', { path }))
  if (Object.hasOwn(entry, 'asFound')) {
    const { asFound } = entry
    return isObject(asFound) && isId(asFound.id)
      ? { ...refused(), asFound: [asFound as Readonly<{ id: string }>] }
      : refused(issue('not-a-shelf-entry', { path }))
  }
  const at = (one: Issue): Issue => ({ ...one, path: one.path === '' ? path : `${path}.${one.path}` })
  const of = documentKind(entry.of, kinds)
  if (!of) return refused(issue('newer-shelf', { path }))
  try {
    const read = (await of.reader()).parse(JSON.stringify(entry.job ?? null))
    if (!read.ok) return refused(...read.issues.map(at))
    const document = isTexts(entry.typed) ? of.onlyTyped(read.value, entry.typed) : read.value
    const changed = isTime(entry.changed) ? entry.changed : now
    const made = isTime(entry.made) ? entry.made : changed
    return { ...refused(), piers: [{ id: isId(entry.id) ? entry.id : newId(), of, made, changed, document }] }
  } catch {
    return refused(issue('not-a-shelf-entry', { path }))
  }
}
