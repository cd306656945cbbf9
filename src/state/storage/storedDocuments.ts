import { notePrefix, type NoteStorage, unreadPrefix } from './note.ts'
import { parsed, rawText, textAt } from './stored.ts'

/** A stored document as a text to take along; `isWhole`: it is a file of ours, else it is what was found. */
export type StoredText = Readonly<{ name: string; text: string; isWhole: boolean }>

const fileOf = (raw: unknown, found: string): StoredText => {
  const job = textAt(raw, 'job')
  return { name: textAt(raw, 'name') || textAt(parsed(job), 'name'), text: job || found, isWhole: job !== '' }
}

const inNotes = (storage: NoteStorage | null): readonly StoredText[] => {
  try {
    const keys = Array.from({ length: storage?.length ?? 0 }, (_, i) => storage?.key(i) ?? '')
    const ours = keys.filter((key) => key.startsWith(notePrefix) || key.startsWith(unreadPrefix))
    return ours.map((key) => storage?.getItem(key) ?? '').map((raw) => fileOf(parsed(raw), raw))
  } catch {
    return []
  }
}

/** Nobody whose page has broken waits longer for a store [ms]. */
const patienceThen = 3000

/**
 * All that this browser keeps, as texts. Nothing is read as a document: it is asked for when the page itself has broken, and it may be
 * one of them that broke it.
 * @param list every record of the store
 */
export const storedDocuments = async (
  storage: NoteStorage | null,
  list: () => Promise<readonly unknown[]>,
  limit = patienceThen,
): Promise<readonly StoredText[]> => {
  const none = new Promise<readonly unknown[]>((resolve) => setTimeout(resolve, limit, []))
  const records = await Promise.race([list(), none]).catch(() => [])
  return [...inNotes(storage), ...records.map((raw) => fileOf(raw, rawText(raw)))]
}
