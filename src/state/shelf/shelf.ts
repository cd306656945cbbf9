import { createStore } from 'zustand/vanilla'
import type { Issue } from '../../core/model/issue.ts'
import type { NoteStorage } from '../sessionNote.ts'
import type { PierStore } from '../store.ts'
import type { Tab } from '../tab.ts'
import type { Draft } from './drafts.ts'
import type { ShelfPort, TroubleCode } from './shelfPort.ts'
import type { Shelved } from './shelfRecord.ts'
import type { Witness } from './witness.ts'

/** Something that is said once: what was done, or why it was not. */
export type Said = Readonly<{
  code:
    | 'saved'
    | 'copied'
    | 'words-kept'
    | 'imported'
    | 'import-refused'
    | 'cannot-open'
    | 'newer-record'
    | 'not-there'
    | 'changed-meanwhile'
    | 'set-aside'
  issues?: readonly Issue[]
  added?: number
  same?: number
}>

export type ShelfState = Readonly<{
  isRead: boolean
  kind: ShelfPort['kind']
  /** Newest first. */
  piers: readonly Shelved[]
  drafts: readonly Draft[]
  trouble: TroubleCode | null
  isSaving: boolean
  said: Said | null
  /** Taken away in this session, last one first: each can be put back. */
  removed: readonly Readonly<{ raw: unknown; name: string }>[]
  /** The open pier was saved or removed elsewhere since this tab saw it; `theirs` is null when it is gone. */
  conflict: Readonly<{ id: string; theirs: Shelved | null }> | null
  /** Piers that were here once and are not any more; 0 for none. */
  missing: number
  witness: Witness
}>

/** What the shelf works with; handed in, so that a test can put trouble in the place of any of it. */
export type ShelfParts = Readonly<{
  pier: PierStore
  port: ShelfPort
  /** Takes the place of a store that the browser does not give. */
  memory: () => ShelfPort
  storage: NoteStorage | null
  tab: Tab
  now: () => number
  newId: () => string
  /** Asks the browser to keep what is saved; null where it can't be asked. */
  persist: (() => Promise<boolean>) | null
  limit: number
}>

export const newShelfState = (kind: ShelfPort['kind'], witness: Witness) =>
  createStore<ShelfState>(() => ({
    isRead: false,
    kind,
    piers: [],
    drafts: [],
    trouble: null,
    isSaving: false,
    said: null,
    removed: [],
    conflict: null,
    missing: 0,
    witness,
  }))
export type ShelfStore = ReturnType<typeof newShelfState>
