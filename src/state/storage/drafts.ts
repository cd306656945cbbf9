import { type DocumentKind, ready, type SmallDrawing } from '../../core/documents/documentKind.ts'
import { documentKinds } from '../../core/documents/index.ts'
import type { Issue } from '../../core/model/issue.ts'
import { type DocumentNote, dropNote, type NoteStorage, noteTabs, readNote } from './note.ts'
import type { Tab } from './tab.ts'

/** A document that was left unsaved: in a tab that is gone, or because another took its place. */
export type Draft = Readonly<{ tab: string; at: number }> &
  (
    | Readonly<{ kind: 'draft'; note: DocumentNote; thumbnail: SmallDrawing | null; isOpen: boolean }>
    | Readonly<{ kind: 'damaged'; raw: string; issues: readonly Issue[] }>
  )

/** What the store shows of the document of a note; unknown while it has not answered. */
export type StoreShows = 'same' | 'other' | 'unknown'

const isSameNote = (a: DocumentNote, b: DocumentNote): boolean =>
  a.of === b.of && a.of.write(a.document) === a.of.write(b.document) && a.of.typed(a.document).join() === a.of.typed(b.document).join()

/**
 * Every note but this tab's own, newest first. One that was clean is no draft while the store shows the same document; when it is open
 * nowhere it goes then, and only then: it may be the last copy.
 */
export const readDrafts = async (
  storage: NoteStorage | null,
  own: Tab,
  shows: (note: DocumentNote) => Promise<StoreShows>,
  kinds: readonly DocumentKind[] = documentKinds,
): Promise<readonly Draft[]> => {
  const live = await own.live()
  const mine = await readNote(storage, own.id, kinds)
  const found: Draft[] = []
  for (const tab of noteTabs(storage)) {
    if (tab === own.id) continue
    const note = await readNote(storage, tab, kinds)
    const isOpen = live?.has(tab) ?? false
    if (note.kind === 'damaged') found.push({ kind: 'damaged', tab, at: 0, raw: note.raw, issues: note.issues })
    if (note.kind !== 'document') continue
    const isGone = note.aside || (live !== null && !isOpen)
    // A tab that took a note over may have died before it let go of the first.
    const isTwice = isGone && !note.aside && mine.kind === 'document' && isSameNote(note, mine)
    const shown = note.clean && note.saved !== null ? await shows(note) : 'other'
    if (isGone && (isTwice || shown === 'same')) dropNote(storage, tab)
    if (isTwice || shown !== 'other') continue
    const { thumbnail } = await ready(note.of)
    found.push({ kind: 'draft', tab, at: note.at, note, thumbnail: thumbnail?.(note.document) ?? null, isOpen })
  }
  // What another tab still shows is listed once, where it can be taken.
  return found.filter(
    (one) =>
      one.kind !== 'draft' ||
      !one.isOpen ||
      !found.some((other) => other !== one && other.kind === 'draft' && !other.isOpen && isSameNote(one.note, other.note)),
  )
}
