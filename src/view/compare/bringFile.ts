import { pierKind } from '../../core/documents/pier.ts'
import type { Issue } from '../../core/model/issue.ts'
import { compareStore } from '../../state/compare.ts'
import { bringPiers } from '../../state/compareActions.ts'
import { seenDocument } from '../../state/derived.ts'
import { pierStore } from '../../state/store.ts'
import { largestJobFile, textIn, unreadable } from '../files/jobFiles.ts'

export type FileRefused = Readonly<{ file: string; issues: readonly Issue[] }>

/** Sets the pier of a job file beside the others; the open pier stays as it is. Null when it went well, else why not. */
export async function bringFile(file: File): Promise<FileRefused | null> {
  if (file.size > largestJobFile)
    return { file: file.name, issues: [{ code: 'file-too-large', severity: 'error', path: '', got: file.size, limit: largestJobFile }] }
  const text = await textIn(file).catch(() => null)
  if (text === null) return { file: file.name, issues: [unreadable] }
  const read = (await pierKind.reader()).parse(text)
  if (!read.ok) return { file: file.name, issues: read.issues }
  bringPiers(compareStore, seenDocument(pierStore.getState()), [read.value])
  return null
}
