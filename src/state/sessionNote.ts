import type { Issue } from '../core/model/issue.ts'
import type { PierDocument } from '../core/model/spec.ts'
import { writeJob } from '../core/spec/writeJob.ts'
import { dismiss, notify } from './actions/notices.ts'
import type { PierStore } from './store.ts'

/**
 * The note of the open pier: written at once on every commit, in the browser's own synchronous storage, so that a crash, a
 * closed tab or a reload loses nothing. It holds a job file and a revision that rises with each writing.
 */
export type NoteStorage = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>

const key = 'pierglass.note'
/** Where the last pier waits while one from a link is open. */
const keyBefore = 'pierglass.note.before'

export type Note =
  | Readonly<{ kind: 'none' }>
  | Readonly<{ kind: 'document'; document: PierDocument; revision: number }>
  /** Never opened on the quiet: `raw` is what was found, for the person to keep. */
  | Readonly<{ kind: 'damaged'; raw: string; issues: readonly Issue[] }>
  | Readonly<{ kind: 'blocked' }>

/** `typed`: paths whose text a person typed. The job file spells out every value, so they are told apart here. */
type Written = Readonly<{ revision: number; job: string; typed: readonly string[] }>

const isWritten = (value: unknown): value is Written =>
  typeof value === 'object' &&
  value !== null &&
  'revision' in value &&
  Number.isSafeInteger(value.revision) &&
  'job' in value &&
  typeof value.job === 'string' &&
  'typed' in value &&
  Array.isArray(value.typed)

const unwrap = (raw: string): Written | null => {
  try {
    const value: unknown = JSON.parse(raw)
    return isWritten(value) ? value : null
  } catch {
    return null
  }
}

const onlyTyped = (document: PierDocument, typed: readonly string[]): PierDocument =>
  Object.freeze({
    ...document,
    written: Object.freeze(Object.fromEntries(Object.entries(document.written).filter(([path]) => typed.includes(path)))),
  })

/** What reads job files is fetched only where a note waits to be read. */
const readAt = async (storage: NoteStorage | null, at: string): Promise<Note> => {
  if (!storage) return { kind: 'blocked' }
  let raw: string | null
  try {
    raw = storage.getItem(at)
  } catch {
    return { kind: 'blocked' }
  }
  if (raw === null) return { kind: 'none' }
  const note = unwrap(raw)
  if (!note) return { kind: 'damaged', raw, issues: [] }
  const { parseJob } = await import('../core/spec/jobFile.ts')
  const read = parseJob(note.job)
  if (!read.ok) return { kind: 'damaged', raw, issues: read.issues }
  return { kind: 'document', document: onlyTyped(read.value, note.typed), revision: note.revision }
}

export const readNote = (storage: NoteStorage | null): Promise<Note> => readAt(storage, key)
export const readNoteBefore = (storage: NoteStorage | null): Promise<Note> => readAt(storage, keyBefore)

/** Puts the last pier aside, so that the pier of a link can take its place without writing over it. */
export const setNoteAside = (storage: NoteStorage | null): void => {
  try {
    const raw = storage?.getItem(key) ?? null
    if (raw !== null) storage?.setItem(keyBefore, raw)
  } catch {
    // The note itself stays where it is; nothing is lost until the next commit, which tells of the trouble.
  }
}

const isFull = (error: unknown): boolean => error instanceof Error && /quota/i.test(`${error.name} ${error.message}`)

/** Writes every committed document from now on. Trouble is told once and told as over when it is. */
export const keepNote = (store: PierStore, storage: NoteStorage | null, firstRevision: number): (() => void) => {
  let revision = firstRevision
  return store.subscribe((state, before) => {
    if (state.document === before.document) return
    revision++
    try {
      if (!storage) throw new Error('no storage')
      const { document } = state
      const note: Written = { revision, job: writeJob(document), typed: Object.keys(document.written) }
      storage.setItem(key, JSON.stringify(note))
      dismiss(store, 'storage-full')
      dismiss(store, 'storage-blocked')
    } catch (error) {
      notify(store, { code: isFull(error) ? 'storage-full' : 'storage-blocked' })
    }
  })
}
