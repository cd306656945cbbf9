import type { DocumentKind } from '../../core/documents/documentKind.ts'
import { lookAt, stopLooking } from '../actions/look.ts'
import { dismiss, notify, tellChanges } from '../actions/notices.ts'
import { seenDocument } from '../derived.ts'
import type { Holder } from '../document/holder.ts'
import { pierHolder } from '../pierHolder.ts'
import type { PierStore } from '../store.ts'
import { type AddressPage, isSamePier, keepAddress, linkIn, type LinkFound } from './address.ts'
import { listenElsewhere } from './elsewhere.ts'
import {
  copyNote,
  type DocumentNote,
  dropNote,
  keepNote,
  keptByNote,
  type Note,
  type NoteStorage,
  noteTabs,
  readNote,
  setUnreadAside,
} from './note.ts'
import { keepPreferences } from './preferences.ts'
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

const tabs = new WeakMap<PierStore, Tab>()
/** The tab that a session runs in; undefined before it has begun. */
export const tabOf = (store: PierStore): Tab | undefined => tabs.get(store)

/** What the note says, told where it needs telling. One that can't be read is put by and never written over. */
const noted = (holder: Holder, storage: NoteStorage | null, note: Note): DocumentNote | null => {
  if (note.kind === 'blocked') holder.notify({ code: 'storage-blocked' })
  if (note.kind === 'damaged') {
    setUnreadAside(storage, note.tab)
    holder.notify({ code: 'note-damaged', issues: note.issues, detail: note.raw })
  }
  return note.kind === 'document' ? note : null
}

/** The note of this tab; for a tab without one, the note of this kind that was written last in any. */
const lastNote = async (storage: NoteStorage | null, own: string, kind: DocumentKind): Promise<Note> => {
  const mine = await readNote(storage, own, [kind])
  if (mine.kind !== 'none') return mine
  const [last] = noteTabs(storage, kind)
  return last === undefined ? mine : readNote(storage, last, [kind])
}

/** A tab that goes on with the document of a tab that is gone takes its note over; of one that still lives it has a copy. */
const takeOver = async (storage: NoteStorage | null, note: DocumentNote, tab: Tab): Promise<void> => {
  if (note.tab === tab.id || !copyNote(storage, note.tab, tab.id)) return
  const live = await tab.live()
  if (live !== null && !live.has(note.tab)) dropNote(storage, note.tab)
}

/** Opens what was open last in this browser, else leaves what everybody starts from. Gives the note that it came with. */
const resume = async (holder: Holder, storage: NoteStorage | null, tab: Tab): Promise<DocumentNote | null> => {
  const last = noted(holder, storage, await lastNote(storage, tab.id, holder.kind))
  if (last === null) return null
  holder.begin(last.document, keptByNote(last))
  tellChanges(holder, last.issues)
  void takeOver(storage, last, tab)
  return last
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
  const holder = pierHolder(store)
  tabs.set(store, tab)
  const { hash } = page.location
  const [last, link] = await Promise.all([resume(holder, storage, tab), linkIn(hash)])
  // The address follows the pier a moment later than the note: a reload in that moment finds an address that this tab has left behind.
  const isBehind = last !== null && last.tab === tab.id && last.hash === hash
  if (!isBehind) show(store, link)

  keepNote(holder, storage, { tab: tab.id, revision: last?.revision ?? 0, hash: () => page.location.hash })
  keepAddress(store, page)
  keepPreferences(store, storage)
  listenElsewhere(holder)
  page.addEventListener('hashchange', () => void followLink(store, page))
}

/** A link's pier, to look at; none where it is the one on the page. A damaged link is told and shows nothing. */
const show = (store: PierStore, link: LinkFound): void => {
  if (link.kind === 'damaged') notify(store, { code: 'link-damaged', issues: link.issues })
  if (link.kind !== 'document') return
  dismiss(store, 'link-damaged')
  const state = store.getState()
  if (isSamePier(link.document.spec, state.document.spec)) stopLooking(store)
  else if (!isSamePier(link.document.spec, seenDocument(state).spec)) {
    lookAt(store, link.document)
    tellChanges(pierHolder(store), link.issues)
  }
}

/** A link pasted into the address of the open page. */
const followLink = async (store: PierStore, page: SessionPage): Promise<void> => show(store, await linkIn(page.location.hash))
