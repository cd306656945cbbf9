import type { Issue } from '../../core/model/issue.ts'
import { dropNote, type DocumentNote, type NoteStorage, noteTabs, readNote } from '../sessionNote.ts'
import type { Tab } from '../tab.ts'
import { type Thumbnail, thumbnailOf } from './thumbnail.ts'

/** A pier that was left unsaved: in a tab that is gone, or because another took its place. */
export type Draft = Readonly<{ tab: string; at: number }> &
  (
    | Readonly<{ kind: 'draft'; note: DocumentNote; thumbnail: Thumbnail; isOpen: boolean }>
    | Readonly<{ kind: 'damaged'; raw: string; issues: readonly Issue[] }>
  )

/** Every note but this tab's own, newest first. What is all kept on the shelf is no draft; when it is open nowhere, its note goes. */
export const readDrafts = async (storage: NoteStorage | null, own: Tab): Promise<readonly Draft[]> => {
  const live = await own.live()
  const found: Draft[] = []
  for (const tab of noteTabs(storage)) {
    if (tab === own.id) continue
    const note = await readNote(storage, tab)
    const isOpen = live?.has(tab) ?? false
    if (note.kind === 'damaged') found.push({ kind: 'damaged', tab, at: 0, raw: note.raw, issues: note.issues })
    if (note.kind !== 'document') continue
    if (note.clean && note.place !== null) {
      if (!isOpen && live !== null) dropNote(storage, tab)
    } else found.push({ kind: 'draft', tab, at: note.at, note, thumbnail: thumbnailOf(note.document.spec), isOpen })
  }
  return found
}
