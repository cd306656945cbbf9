import type { PierDocument } from '../core/model/spec.ts'
import { openDocument } from './actions/document.ts'
import { dismiss, notify } from './actions/notices.ts'
import { type AddressPage, isSamePier, keepAddress, linkIn } from './addressBar.ts'
import { keepPreferences } from './preferences.ts'
import { keepNote, type Note, type NoteStorage, readNote, readNoteBefore, setNoteAside } from './sessionNote.ts'
import type { PierStore } from './store.ts'

export type SessionPage = AddressPage & Readonly<{ addEventListener: (type: 'hashchange', listener: () => void) => void }>

/** The browser's storage, or null where it keeps none; asking for it can throw. */
const storageOf = (): NoteStorage | null => {
  try {
    return globalThis.localStorage ?? null
  } catch {
    return null
  }
}

/** The first document of a session is no undo step. */
const begin = (store: PierStore, document: PierDocument): void => {
  store.setState({ document })
  store.temporal.getState().clear()
}

/** What the note says, told where it needs telling. */
const noted = (store: PierStore, note: Note): PierDocument | null => {
  if (note.kind === 'blocked') notify(store, { code: 'storage-blocked' })
  if (note.kind === 'damaged') notify(store, { code: 'note-damaged', issues: note.issues, detail: note.raw })
  return note.kind === 'document' ? note.document : null
}

/**
 * Opens what the address holds, else what was open last, else the pier that everybody starts from; then keeps note and address
 * at every commit. A link never takes the place of another last pier for good: that one waits, and is offered. Nothing may be
 * changed, and nothing is kept, before it is done.
 */
export const startSession = async (store: PierStore, page: SessionPage, storage: NoteStorage | null = storageOf()): Promise<void> => {
  const [note, link] = await Promise.all([readNote(storage), linkIn(page.location.hash)])
  const last = noted(store, note)
  if (link.kind === 'damaged') notify(store, { code: 'link-damaged', issues: link.issues })
  if (link.kind === 'pier') {
    const isLast = last !== null && isSamePier(last.spec, link.document.spec)
    begin(store, isLast ? last : link.document)
    if (last && !isLast) {
      setNoteAside(storage)
      notify(store, { code: 'link-opened-beside-last' })
    }
  } else if (last) begin(store, last)

  keepNote(store, storage, note.kind === 'document' ? note.revision : 0)
  keepAddress(store, page)
  keepPreferences(store, storage)
  page.addEventListener('hashchange', () => void followLink(store, page))
}

/** A link pasted into the address of the open page: its pier opens as one undo step. */
const followLink = async (store: PierStore, page: SessionPage): Promise<void> => {
  const link = await linkIn(page.location.hash)
  if (link.kind === 'damaged') notify(store, { code: 'link-damaged', issues: link.issues })
  if (link.kind !== 'pier' || isSamePier(link.document.spec, store.getState().document.spec)) return
  dismiss(store, 'link-damaged')
  openDocument(store, link.document)
}

/** The pier that was open before a link was: back in place, as one undo step. */
export const goBackToLast = async (store: PierStore, storage: NoteStorage | null = storageOf()): Promise<void> => {
  dismiss(store, 'link-opened-beside-last')
  const document = noted(store, await readNoteBefore(storage))
  if (document) openDocument(store, document)
}
