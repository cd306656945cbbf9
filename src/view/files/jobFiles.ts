import type { Issue } from '../../core/model/issue.ts'
import { pierKind } from '../../core/documents/pier.ts'
import type { PierDocument } from '../../core/model/spec.ts'
import { largestText } from '../../core/spec/jobText.ts'
import { openDocument } from '../../state/actions/document.ts'
import { dismiss, notify } from '../../state/actions/notices.ts'
import type { PierStore } from '../../state/store.ts'
import { fileName } from '../../export/fileName.ts'
import { textOf } from '../../export/textOf.ts'
import { saveFile } from './handOver.ts'

/** Hands the browser a text to save under a name. */
export const saveTextFile = (name: string, text: string, type = 'text/plain'): void => saveFile({ name, blob: new Blob([text], { type }) })

export const saveJobFile = (pier: PierDocument): void =>
  saveTextFile(fileName(pier.name, 'pier', 'json'), pierKind.write(pier), 'application/json')

/** Rejects where a folder was dropped, or the file is gone or locked. */
export const textIn = async (file: Blob): Promise<string> => textOf(new Uint8Array(await file.arrayBuffer()))

/** Told of a file whose text can't be had. */
export const unreadable: Issue = { code: 'file-unreadable', severity: 'error', path: '' }

/** A file that must hold more characters than are read at all is not even opened [bytes]. */
export const largestJobFile = 4 * largestText

/** What was said of the file before: a listener hears it said anew. */
const forget = (store: PierStore): void => {
  dismiss(store, 'file-refused')
  dismiss(store, 'file-opened')
}

const refuse = (store: PierStore, name: string, issues: readonly Issue[]): void =>
  notify(store, { code: 'file-refused', detail: name, issues })

/**
 * Opens a job as one undo step, from wherever its text is read. A text that can't be read, is no job, or whose pier can't be built
 * changes nothing and says all that is wrong.
 * @param name told with the outcome
 */
export const openJob = async (store: PierStore, name: string, read: () => Promise<string>): Promise<void> => {
  forget(store)
  const text = await read().catch(() => null)
  if (text === null) return refuse(store, name, [unreadable])
  const job = (await pierKind.reader()).parse(text)
  if (!job.ok) return refuse(store, name, job.issues)
  openDocument(store, job.value)
  notify(store, { code: 'file-opened', detail: name })
}

/** Opens a job file; one that is larger than any job is not even read. */
export const openJobFile = async (store: PierStore, file: File): Promise<void> => {
  if (file.size <= largestJobFile) return openJob(store, file.name, () => textIn(file))
  forget(store)
  refuse(store, file.name, [{ code: 'file-too-large', severity: 'error', path: '', got: file.size, limit: largestJobFile }])
}
