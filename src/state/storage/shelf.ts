import { ready } from '../../core/documents/documentKind.ts'
import { type ShelfDesk, shelfDesk, type ShelfParts } from './desk.ts'
import { hearOthers } from './elsewhere.ts'
import { dropNote, keptByNote, readNote } from './note.ts'
import { recordOf } from './record.ts'
import { saving } from './saving.ts'
import { readShelf, writeShelf } from './shelfFile.ts'
import { tending } from './tending.ts'
import { keepWitness } from './witness.ts'

/** Documents that come from elsewhere or go there: files, and what was left unsaved. */
const filesAndDrafts = ({ parts, kinds, state, set, say, ask, sorted, write, relist, readDraftsAgain }: ShelfDesk) => {
  const { holder, others, storage, tab, now, newId } = parts

  /**
   * Adds what a file holds. Nothing that is on the shelf is changed: a document that differs from the one of its id comes beside it.
   * @param text null for a file that can't be read
   */
  const importText = async (text: string | null): Promise<void> => {
    if (text === null) return say({ code: 'import-refused', issues: [{ code: 'file-unreadable', severity: 'error', path: '' }] })
    const file = await readShelf(text, { now: now(), newId, kinds })
    let added = 0
    let same = 0
    for (const { id, of, made, changed, document } of file.piers) {
      const record = recordOf(await ready(of), document, { id, revision: 1, made, changed })
      const there = await ask((one) => one.get(id))
      const known = there === undefined || there === null ? null : sorted(there)
      if (known?.kind === 'whole' && known.record.job === record.job) {
        same++
        continue
      }
      const written = await write(known ? { ...record, id: newId() } : record, null)
      if (written === null) break
      if (written === 'done') added++
    }
    for (const raw of file.asFound) if ((await ask((one) => one.put(raw, null))) === 'done') added++
    say({ code: added + same > 0 ? 'imported' : 'import-refused', issues: file.issues, added, same })
    await relist()
  }

  /** All that is saved as the text of one file. */
  const exportText = (): string => {
    set({ witness: keepWitness(storage, { unfiled: 0 }) })
    return writeShelf(state.getState().piers)
  }

  const openDraft = async (draftTab: string): Promise<void> => {
    const draft = state.getState().drafts.find((one) => one.tab === draftTab)
    if (draft?.kind !== 'draft') return
    const { note, isOpen } = draft
    const isThere = state.getState().piers.some(({ id }) => id === note.id)
    const page = [holder, ...others].find((one) => one.kind === note.of) ?? holder
    // It is among the drafts because the store does not show it: whatever its note says, it is not kept.
    page.open(note.document, { ...keptByNote(note), document: null, ...(isThere ? {} : { place: null }) })
    const mine = await readNote(storage, tab.id, kinds)
    const isMine = mine.kind === 'document' && note.of.write(mine.document) === note.of.write(note.document)
    if (!isOpen && isMine) dropNote(storage, draftTab)
    await readDraftsAgain()
  }
  const dropDraft = async (draftTab: string): Promise<void> => {
    dropNote(storage, draftTab)
    await readDraftsAgain()
  }

  return { importText, exportText, openDraft, dropDraft }
}

/** The shelf of saved documents: its state, and everything that can be done with it. Nothing is called saved before it lies in the store. */
export const createShelf = (parts: ShelfParts) => {
  const desk = shelfDesk(parts)
  const { state, set, say, refresh } = desk
  return {
    state,
    refresh,
    ...saving(desk),
    ...tending(desk),
    ...filesAndDrafts(desk),
    forget: () => say(null),
    /** The store itself has something to say: an old tab holds it, or a newer page has made it over. */
    heard: (code: 'held' | 'newer') => set({ trouble: code }),
    unheard: (code: 'held' | 'newer') => state.getState().trouble === code && set({ trouble: null }),
    end: hearOthers(() => void refresh()),
  }
}

export type Shelf = ReturnType<typeof createShelf>
