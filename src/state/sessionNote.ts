import type { Issue } from '../core/model/issue.ts'
import type { PierDocument } from '../core/model/spec.ts'
import { writeJob } from '../core/spec/writeJob.ts'
import { dismiss, notify } from './actions/notices.ts'
import type { AppState, Place } from './appState.ts'
import { isKept, keptOf } from './kept.ts'
import type { PierStore } from './store.ts'
import { newId } from './tab.ts'

/**
 * The note of the open pier: written at once on every commit, in the browser's own synchronous storage, so that a crash, a
 * closed tab or a reload loses nothing. Each tab has one of its own. It holds a job file and a revision that rises with each writing.
 */
export type NoteStorage = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>

const prefix = 'pierglass.note.'
/** Notes that could not be read wait here for the person to take along. */
const unreadPrefix = 'pierglass.unread.'

export type DocumentNote = Readonly<{
  kind: 'document'
  tab: string
  document: PierDocument
  revision: number
  /** When it was written [ms since 1970]. */
  at: number
  /** What the address held then. */
  hash: string
  place: Place | null
  /** Is all of it kept at `place`? */
  clean: boolean
}>
export type Note =
  | Readonly<{ kind: 'none' }>
  | DocumentNote
  /** Never opened on the quiet: `raw` is what was found, for the person to keep. */
  | Readonly<{ kind: 'damaged'; tab: string; raw: string; issues: readonly Issue[] }>
  | Readonly<{ kind: 'blocked' }>

/** `typed`: paths whose text a person typed. The job file spells out every value, so they are told apart here. */
type Written = Readonly<{
  revision: number
  at: number
  job: string
  typed: readonly string[]
  hash: string
  place: Place | null
  clean: boolean
}>

const isPlace = (value: unknown): value is Place =>
  typeof value === 'object' &&
  value !== null &&
  'id' in value &&
  typeof value.id === 'string' &&
  'revision' in value &&
  Number.isSafeInteger(value.revision)

const isWritten = (value: unknown): value is Written =>
  typeof value === 'object' &&
  value !== null &&
  'revision' in value &&
  Number.isSafeInteger(value.revision) &&
  'at' in value &&
  Number.isFinite(value.at) &&
  'job' in value &&
  typeof value.job === 'string' &&
  'typed' in value &&
  Array.isArray(value.typed) &&
  'hash' in value &&
  typeof value.hash === 'string' &&
  'place' in value &&
  (value.place === null || isPlace(value.place)) &&
  'clean' in value &&
  typeof value.clean === 'boolean'

const unwrap = (raw: string): Written | null => {
  try {
    const value: unknown = JSON.parse(raw)
    return isWritten(value) ? value : null
  } catch {
    return null
  }
}

/** A document as a person left it: values that nobody typed have no text. */
export const onlyTyped = (document: PierDocument, typed: readonly string[]): PierDocument =>
  Object.freeze({
    ...document,
    written: Object.freeze(Object.fromEntries(Object.entries(document.written).filter(([path]) => typed.includes(path)))),
  })

/** Every tab that left a note, the one written last first; those that can't be read come last. */
export const noteTabs = (storage: NoteStorage | null): readonly string[] => {
  if (!storage) return []
  try {
    const keys = Array.from({ length: storage.length }, (_, i) => storage.key(i) ?? '').filter((key) => key.startsWith(prefix))
    const written = keys.map((key) => [key.slice(prefix.length), unwrap(storage.getItem(key) ?? '')?.at ?? 0] as const)
    return written.sort(([, a], [, b]) => b - a).map(([tab]) => tab)
  } catch {
    return []
  }
}

/** What reads job files is fetched only where a note waits to be read. */
export const readNote = async (storage: NoteStorage | null, tab: string): Promise<Note> => {
  if (!storage) return { kind: 'blocked' }
  let raw: string | null
  try {
    raw = storage.getItem(prefix + tab)
  } catch {
    return { kind: 'blocked' }
  }
  if (raw === null) return { kind: 'none' }
  const note = unwrap(raw)
  if (!note) return { kind: 'damaged', tab, raw, issues: [] }
  const { parseJob } = await import('../core/spec/jobFile.ts')
  const read = parseJob(note.job)
  if (!read.ok) return { kind: 'damaged', tab, raw, issues: read.issues }
  const { revision, at, hash, place, clean } = note
  return { kind: 'document', tab, document: onlyTyped(read.value, note.typed), revision, at, hash, place, clean }
}

/** Changes what is stored; a storage that refuses leaves all as it was. */
const tried = (change: () => void): boolean => {
  try {
    change()
    return true
  } catch {
    return false
  }
}

/** The note of another tab becomes the note of this one; the other's stays. */
export const copyNote = (storage: NoteStorage | null, from: string, to: string): boolean =>
  tried(() => {
    const raw = storage?.getItem(prefix + from) ?? null
    if (raw !== null) storage?.setItem(prefix + to, raw)
  })

export const dropNote = (storage: NoteStorage | null, tab: string): boolean => tried(() => storage?.removeItem(prefix + tab))

/** A note that can't be read makes room for the next one, and is kept as it was found. */
export const setUnreadAside = (storage: NoteStorage | null, tab: string): boolean =>
  tried(() => {
    const raw = storage?.getItem(prefix + tab) ?? null
    if (raw === null) return
    storage?.setItem(unreadPrefix + tab, raw)
    storage?.removeItem(prefix + tab)
  })

const noteOf = (state: Pick<AppState, 'document' | 'kept' | 'lineage'>, revision: number, hash: string): Written => ({
  revision,
  at: Date.now(),
  job: writeJob(state.document),
  typed: Object.keys(state.document.written),
  hash,
  place: keptOf(state).place,
  clean: isKept(state),
})

/** Keeps a pier that makes way for another in a note of its own; gives the note's tab, null where nothing can be kept. */
export const setAside = (storage: NoteStorage | null, state: Pick<AppState, 'document' | 'kept' | 'lineage'>): string | null => {
  if (!storage) return null
  const tab = newId()
  return tried(() => storage.setItem(prefix + tab, JSON.stringify(noteOf(state, 1, '')))) ? tab : null
}

const isFull = (error: unknown): boolean => error instanceof Error && /quota/i.test(`${error.name} ${error.message}`)

/**
 * Writes every committed document from now on. Trouble is told once and told as over when it is. A pier that makes way for another
 * before it was kept anywhere is set aside first.
 */
export const keepNote = (
  store: PierStore,
  storage: NoteStorage | null,
  { tab, revision: first, hash }: Readonly<{ tab: string; revision: number; hash: () => string }>,
): (() => void) => {
  let revision = first
  const asides = new Map<number, string>()
  const write = (state: AppState): void => {
    revision++
    try {
      if (!storage) throw new Error('no storage')
      storage.setItem(prefix + tab, JSON.stringify(noteOf(state, revision, hash())))
      dismiss(store, 'storage-full')
      dismiss(store, 'storage-blocked')
    } catch (error) {
      notify(store, { code: isFull(error) ? 'storage-full' : 'storage-blocked' })
    }
  }
  return store.subscribe((state, before) => {
    if (state.lineage !== before.lineage) {
      const aside = isKept(before) ? null : setAside(storage, before)
      if (aside !== null) asides.set(before.lineage, aside)
      const back = asides.get(state.lineage)
      if (back !== undefined) dropNote(storage, back)
      asides.delete(state.lineage)
    }
    if (state.document !== before.document || state.kept !== before.kept) write(state)
  })
}
