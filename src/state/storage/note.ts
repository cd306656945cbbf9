import type { AnyDocument, DocumentKind } from '../../core/documents/documentKind.ts'
import { documentKind, documentKinds } from '../../core/documents/index.ts'
import type { Issue } from '../../core/model/issue.ts'
import type { Holder } from '../document/holder.ts'
import { isKept, type Kept, keptOf, newId, type Opened } from '../document/opened.ts'
import { isId, isTexts, isTime, numberAt, parsed, textAt, valueIn } from './stored.ts'

/**
 * The note of an open document: written at once on every commit, in the browser's own synchronous storage, so that a crash, a
 * closed tab or a reload loses nothing. Each tab has one of its own. It holds a file of the document and a revision that rises with
 * each writing.
 */
export type NoteStorage = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>

export const notePrefix = 'pierglass.note.'
/** Notes that could not be read wait here for the person to take along. */
export const unreadPrefix = 'pierglass.unread.'
/** How many notes were written in this browser: which one is the last does not hang on a clock. */
const countKey = 'pierglass.notes'

export type DocumentNote = Readonly<{
  kind: 'document'
  tab: string
  /** Id of the kind of document. */
  of: DocumentKind
  /** Id of the document. */
  id: string
  document: AnyDocument
  revision: number
  /** When it was written [ms since 1970]. */
  at: number
  /** What the address held then. */
  hash: string
  /** Revision on the shelf that it goes on from; null: it was never saved there. */
  saved: number | null
  /** Was all of it kept elsewhere then? */
  clean: boolean
  /** Set aside when another document took its place: no tab goes on with it. */
  aside: boolean
  /** What has moved since the version that wrote it. */
  issues: readonly Issue[]
}>
export type Note =
  | Readonly<{ kind: 'none' }>
  | DocumentNote
  /** Never opened on the quiet: `raw` is what was found, for the person to keep. */
  | Readonly<{ kind: 'damaged'; tab: string; raw: string; issues: readonly Issue[] }>
  | Readonly<{ kind: 'blocked' }>

/** `typed`: paths whose text a person typed. The file spells out every value, so they are told apart here. */
type Written = Readonly<{
  of?: string
  id?: string
  revision: number
  /** Which one of all notes of this browser it was; 0 for one from before they were counted. */
  order?: number
  at: number
  job: string
  typed: readonly string[]
  hash: string
  place: Readonly<{ id: string; revision: number }> | null
  clean: boolean
  aside?: boolean
}>

const isPlace = (value: unknown): boolean =>
  value === null || (isId(valueIn(value, 'id')) && Number.isSafeInteger(valueIn(value, 'revision')))
const isWritten = (value: unknown): value is Written =>
  Number.isSafeInteger(valueIn(value, 'revision')) &&
  isTime(valueIn(value, 'at')) &&
  typeof valueIn(value, 'job') === 'string' &&
  isTexts(valueIn(value, 'typed')) &&
  typeof valueIn(value, 'hash') === 'string' &&
  isPlace(valueIn(value, 'place')) &&
  typeof valueIn(value, 'clean') === 'boolean'

type Age = Readonly<{ tab: string; of: string; order: number; at: number }>
const ageOf = (tab: string, raw: string): Age => {
  const value = parsed(raw)
  return { tab, of: textAt(value, 'of'), order: numberAt(value, 'order') || 0, at: numberAt(value, 'at') || 0 }
}

/** Every tab that left a note, the one written last first; those that can't be read come last. */
export const noteTabs = (storage: NoteStorage | null, kind?: DocumentKind): readonly string[] => {
  if (!storage) return []
  try {
    const keys = Array.from({ length: storage.length }, (_, i) => storage.key(i) ?? '').filter((key) => key.startsWith(notePrefix))
    return keys
      .map((key) => ageOf(key.slice(notePrefix.length), storage.getItem(key) ?? ''))
      .filter(({ of }) => kind === undefined || (documentKind(of || undefined)?.id ?? of) === kind.id)
      .sort((a, b) => b.order - a.order || b.at - a.at)
      .map(({ tab }) => tab)
  } catch {
    return []
  }
}

/** What reads documents is fetched only where a note waits to be read. */
export const readNote = async (storage: NoteStorage | null, tab: string, kinds: readonly DocumentKind[] = documentKinds): Promise<Note> => {
  if (!storage) return { kind: 'blocked' }
  let raw: string | null
  try {
    raw = storage.getItem(notePrefix + tab)
  } catch {
    return { kind: 'blocked' }
  }
  if (raw === null) return { kind: 'none' }
  const note = parsed(raw)
  const of = isWritten(note) ? documentKind(note.of, kinds) : undefined
  if (!isWritten(note) || !of) return { kind: 'damaged', tab, raw, issues: [] }
  const { parse } = await of.reader()
  const read = parse(note.job)
  if (!read.ok) return { kind: 'damaged', tab, raw, issues: read.issues }
  const { revision, at, hash, place, clean } = note
  const { issues } = read
  const id = place?.id ?? note.id ?? newId()
  const document = of.onlyTyped(read.value, note.typed)
  const saved = place?.revision ?? null
  return { kind: 'document', tab, of, id, document, revision, at, hash, saved, clean, aside: note.aside ?? false, issues }
}

/** What a note says of where its document is kept. */
export const keptByNote = ({ id, document, saved, clean }: DocumentNote): Kept => ({
  id,
  document: clean ? document : null,
  place: saved === null ? null : { revision: saved, lasts: true },
})

/** Changes what is stored; a storage that refuses leaves all as it was. */
const tried = (change: () => void): boolean => {
  try {
    change()
    return true
  } catch {
    return false
  }
}

/** The note of another tab becomes the note of this one; the other's stays. False where this tab has no such note afterwards. */
export const copyNote = (storage: NoteStorage | null, from: string, to: string): boolean => {
  try {
    const raw = storage?.getItem(notePrefix + from) ?? null
    if (raw === null) return false
    storage?.setItem(notePrefix + to, raw)
    return storage?.getItem(notePrefix + to) === raw
  } catch {
    return false
  }
}

export const dropNote = (storage: NoteStorage | null, tab: string): boolean => tried(() => storage?.removeItem(notePrefix + tab))

/** A note that can't be read makes room for the next one, and is kept as it was found. */
export const setUnreadAside = (storage: NoteStorage | null, tab: string): boolean =>
  tried(() => {
    const raw = storage?.getItem(notePrefix + tab) ?? null
    if (raw === null) return
    storage?.setItem(unreadPrefix + tab, raw)
    storage?.removeItem(notePrefix + tab)
  })

/** The next number for a note. */
const counted = (storage: NoteStorage): number => {
  const before = Number(storage.getItem(countKey))
  const next = Number.isSafeInteger(before) && before >= 0 ? before + 1 : 1
  storage.setItem(countKey, String(next))
  return next
}

type Left = Readonly<{ document: AnyDocument; kept: Kept }>
const writeNote = (storage: NoteStorage, tab: string, kind: DocumentKind, { document, kept }: Left, more: Partial<Written>): void => {
  const { id, place } = kept
  const note: Written = {
    of: kind.id,
    id,
    revision: 1,
    order: counted(storage),
    at: Date.now(),
    job: kind.write(document),
    typed: kind.typed(document),
    hash: '',
    // What lies in this page's memory alone is nowhere once the page is gone.
    place: place?.lasts ? { id, revision: place.revision } : null,
    clean: kept.document === document,
    ...more,
  }
  storage.setItem(notePrefix + tab, JSON.stringify(note))
}

/** Keeps a document that makes way for another in a note of its own; gives the note's tab, null where nothing can be kept. */
export const setAside = (storage: NoteStorage | null, kind: DocumentKind, left: Left): string | null => {
  if (!storage) return null
  const tab = newId()
  return tried(() => writeNote(storage, tab, kind, left, { aside: true })) ? tab : null
}

const isFull = (error: unknown): boolean => error instanceof Error && /quota/i.test(`${error.name} ${error.message}`)

/** Must a document be set aside before another takes its place? One from the shelf always: only the store itself can say that it is there. */
const mayBeLost = (state: Opened): boolean => !isKept(state) || keptOf(state).place !== null

/**
 * Writes every committed document from now on. Trouble is told once and told as over when it is. A document that makes way for another
 * is set aside first, and taken back when undo brings it back.
 */
export const keepNote = (
  holder: Holder,
  storage: NoteStorage | null,
  { tab, revision: first, hash }: Readonly<{ tab: string; revision: number; hash: () => string }>,
): (() => void) => {
  let revision = first
  const asides = new Map<number, string>()
  const write = (state: Opened): boolean => {
    revision++
    try {
      if (!storage) throw new Error('no storage')
      writeNote(storage, tab, holder.kind, { document: state.document, kept: keptOf(state) }, { revision, hash: hash() })
      holder.dismiss('storage-full')
      holder.dismiss('storage-blocked')
      return true
    } catch (error) {
      holder.notify({ code: isFull(error) ? 'storage-full' : 'storage-blocked' })
      return false
    }
  }
  return holder.subscribe((state, before) => {
    if (state.lineage !== before.lineage && mayBeLost(before)) {
      const aside = setAside(storage, holder.kind, { document: before.document, kept: keptOf(before) })
      if (aside !== null) asides.set(before.lineage, aside)
    }
    if (state.document === before.document && state.kept === before.kept) return
    const isWritten = write(state)
    const back = asides.get(state.lineage)
    if (state.lineage === before.lineage || back === undefined || !isWritten) return
    dropNote(storage, back)
    asides.delete(state.lineage)
  })
}
