import { pierKind } from '../../core/documents/pier.ts'
import type { Issue } from '../../core/model/issue.ts'
import { largestText } from '../../core/spec/jobText.ts'
import { compareStore } from '../../state/compare.ts'
import { bringPiers } from '../../state/compareActions.ts'
import { seenDocument } from '../../state/derived.ts'
import { pierStore } from '../../state/store.ts'

export type FileRefused = Readonly<{ file: string; issues: readonly Issue[] }>

/** A file that must hold more characters than are read at all is not even opened [bytes]. */
const largest = 4 * largestText

/** Sets the pier of a job file beside the others; the open pier stays as it is. Null when it went well, else why not. */
export async function bringFile(file: File): Promise<FileRefused | null> {
  if (file.size > largest)
    return { file: file.name, issues: [{ code: 'file-too-large', severity: 'error', path: '', got: file.size, limit: largest }] }
  const text = await file.text().catch(() => null)
  if (text === null) return { file: file.name, issues: [{ code: 'file-unreadable', severity: 'error', path: '' }] }
  const read = (await pierKind.reader()).parse(text)
  if (!read.ok) return { file: file.name, issues: read.issues }
  bringPiers(compareStore, seenDocument(pierStore.getState()), [read.value])
  return null
}
