import { openDocument } from '../actions/document.ts'
import { dropNote } from '../sessionNote.ts'
import { keptByNote } from '../start.ts'
import type { ShelfDesk } from './shelfDesk.ts'
import { readShelf, writeShelf } from './shelfFile.ts'
import { recordOf, shelved } from './shelfRecord.ts'
import { keepWitness } from './witness.ts'

/** Piers that come from elsewhere or go there: files, and what was left unsaved. */
export const filesAndDrafts = ({ parts, state, set, say, ask, write, relist, readDraftsAgain }: ShelfDesk) => {
  const { pier, storage, now, newId } = parts

  /** Adds what a file holds. Nothing that is on the shelf is changed: a pier that differs from the one of its id comes beside it. */
  const importText = async (text: string): Promise<void> => {
    const file = readShelf(text, now(), newId)
    let added = 0
    let same = 0
    for (const { id, made, changed, document } of file.piers) {
      const record = recordOf(document, { id, revision: 1, made, changed })
      const there = await ask((one) => one.get(id))
      const known = there === undefined || there === null ? null : shelved(there)
      if (known?.kind === 'pier' && known.record.job === record.job) {
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

  /** All saved piers as the text of one file. */
  const exportText = (): string => {
    set({ witness: keepWitness(storage, { unfiled: 0 }) })
    return writeShelf(state.getState().piers)
  }

  const openDraft = (draftTab: string): void => {
    const draft = state.getState().drafts.find((one) => one.tab === draftTab)
    if (draft?.kind !== 'draft') return
    openDocument(pier, draft.note.document, keptByNote(draft.note))
    if (!draft.isOpen) dropNote(storage, draftTab)
    void readDraftsAgain()
  }
  const dropDraft = (draftTab: string): void => {
    dropNote(storage, draftTab)
    void readDraftsAgain()
  }

  return { importText, exportText, openDraft, dropDraft }
}
