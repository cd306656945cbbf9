import { lookAt, stopLooking } from './actions/look.ts'
import { dismiss, notify } from './actions/notices.ts'
import { type AddressPage, isSamePier, keepAddress, linkIn, type LinkFound } from './addressBar.ts'
import type { PierDocument } from '../core/model/spec.ts'
import type { Kept } from './appState.ts'
import { seenDocument } from './derived.ts'
import { newLineage } from './lineage.ts'
import { keepPreferences } from './preferences.ts'
import {
  copyNote,
  type DocumentNote,
  dropNote,
  keepNote,
  type Note,
  type NoteStorage,
  noteTabs,
  readNote,
  setUnreadAside,
} from './sessionNote.ts'
import { listenElsewhere } from './shelf/elsewhere.ts'
import type { PierStore } from './store.ts'
import { browserTab, type Tab } from './tab.ts'

export type SessionPage = AddressPage & Readonly<{ addEventListener: (type: 'hashchange', listener: () => void) => void }>

/** The browser's storage, or null where it keeps none; asking for it can throw. */
export const storageOf = (): NoteStorage | null => {
  try {
    return globalThis.localStorage ?? null
  } catch {
    return null
  }
}

/** What a note says of where its pier is kept. */
export const keptByNote = ({ document, place, clean }: DocumentNote): Kept => ({ document: clean ? document : null, place })

const tabs = new WeakMap<PierStore, Tab>()
/** The tab that a session runs in; undefined before it has begun. */
export const tabOf = (store: PierStore): Tab | undefined => tabs.get(store)

/** The first document of a session is no undo step. */
const begin = (store: PierStore, document: PierDocument, kept: Kept): void => {
  const lineage = newLineage()
  store.setState((state) => ({ document, lineage, kept: { ...state.kept, [lineage]: kept } }))
  store.temporal.getState().clear()
}

/** What the note says, told where it needs telling. One that can't be read is put by and never written over. */
const noted = (store: PierStore, storage: NoteStorage | null, note: Note): DocumentNote | null => {
  if (note.kind === 'blocked') notify(store, { code: 'storage-blocked' })
  if (note.kind === 'damaged') {
    setUnreadAside(storage, note.tab)
    notify(store, { code: 'note-damaged', issues: note.issues, detail: note.raw })
  }
  return note.kind === 'document' ? note : null
}

/** The note of this tab; for a tab without one, the note that was written last in any. */
const lastNote = async (storage: NoteStorage | null, own: string): Promise<Note> => {
  const mine = await readNote(storage, own)
  if (mine.kind !== 'none') return mine
  const [last] = noteTabs(storage)
  return last === undefined ? mine : readNote(storage, last)
}

/** A tab that goes on with the pier of a tab that is gone takes its note over; of one that still lives it has a copy. */
const takeOver = async (storage: NoteStorage | null, note: DocumentNote, tab: Tab): Promise<void> => {
  if (note.tab === tab.id) return
  copyNote(storage, note.tab, tab.id)
  const live = await tab.live()
  if (live !== null && !live.has(note.tab)) dropNote(storage, note.tab)
}

/**
 * Opens the pier that was open last, else the one that everybody starts from; then keeps note and address at every commit. A pier that
 * the address holds is shown to look at, before the open one, which it never takes the place of by itself. Nothing may be changed, and
 * nothing is kept, before it is done.
 */
export const startSession = async (
  store: PierStore,
  page: SessionPage,
  storage: NoteStorage | null = storageOf(),
  asked: Promise<Tab> = browserTab(),
): Promise<void> => {
  const tab = await asked
  tabs.set(store, tab)
  const { hash } = page.location
  const [note, link] = await Promise.all([lastNote(storage, tab.id), linkIn(hash)])
  const last = noted(store, storage, note)
  if (last !== null) {
    begin(store, last.document, keptByNote(last))
    void takeOver(storage, last, tab)
  }
  // The address follows the pier a moment later than the note: a reload in that moment finds an address that this tab has left behind.
  const isBehind = last !== null && last.tab === tab.id && last.hash === hash
  if (!isBehind) show(store, link)

  keepNote(store, storage, { tab: tab.id, revision: last?.revision ?? 0, hash: () => page.location.hash })
  keepAddress(store, page)
  keepPreferences(store, storage)
  listenElsewhere(store)
  page.addEventListener('hashchange', () => void followLink(store, page))
}

/** A link's pier, to look at; none where it is the one on the page. A damaged link is told and shows nothing. */
const show = (store: PierStore, link: LinkFound): void => {
  if (link.kind === 'damaged') notify(store, { code: 'link-damaged', issues: link.issues })
  if (link.kind !== 'pier') return
  dismiss(store, 'link-damaged')
  const state = store.getState()
  if (isSamePier(link.document.spec, state.document.spec)) stopLooking(store)
  else if (!isSamePier(link.document.spec, seenDocument(state).spec)) lookAt(store, link.document)
}

/** A link pasted into the address of the open page. */
const followLink = async (store: PierStore, page: SessionPage): Promise<void> => show(store, await linkIn(page.location.hash))
