import type { Issue, Result } from '../../core/model/issue.ts'
import type { IssueCode } from '../../core/spec/issueCodes.ts'
import { pierKind } from '../../core/documents/pier.ts'
import type { PierDocument } from '../../core/model/spec.ts'
import { openDocument } from '../../state/actions/document.ts'
import { dismiss, notify, tellChanges } from '../../state/actions/notices.ts'
import { pierHolder } from '../../state/pierHolder.ts'
import type { PierStore } from '../../state/store.ts'
import { fileName } from '../../export/fileName.ts'
import { textOf } from '../../export/textOf.ts'
import { saveFile } from './handOver.ts'

/** Hands the browser a text to save under a name. */
export const saveTextFile = (name: string, text: string, type = 'text/plain'): void => saveFile({ name, blob: new Blob([text], { type }) })

export const saveJobFile = (pier: PierDocument): void =>
  saveTextFile(fileName(pier.name, 'pier', 'json'), pierKind.write(pier), 'application/json')

/** Is a file being dragged, and not a text or a picture? */
export const holdsFile = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') ?? false

/** Rejects where a folder was dropped, or the file is gone or locked. */
export const textIn = async (file: Blob): Promise<string> => textOf(new Uint8Array(await file.arrayBuffer()))

const wrong = (code: IssueCode, facts: Partial<Issue> = {}): Result<never> => ({
  ok: false,
  issues: [{ code, severity: 'error', path: '', ...facts }],
})

/** The pier of a job, from wherever its text is read; else all that is wrong with it. */
export const jobFrom = async (read: () => Promise<string>): Promise<Result<PierDocument>> => {
  const text = await read().catch(() => null)
  return text === null ? wrong('file-unreadable') : (await pierKind.reader()).parse(text)
}

/** The pier of a job file; one that is larger than any job is not even read. */
export const jobInFile = async (file: File): Promise<Result<PierDocument>> => {
  const { largestText } = await import('../../core/spec/jobText.ts')
  // A file that must hold more characters than are read at all [bytes].
  const largest = 4 * largestText
  return file.size > largest ? wrong('file-too-large', { got: file.size, limit: largest }) : jobFrom(() => textIn(file))
}

/**
 * Opens a job as one undo step. A text that can't be read, is no job, or whose pier can't be built changes nothing and says all that is
 * wrong.
 * @param name told with the outcome
 */
export const openJob = async (store: PierStore, name: string, asked: Promise<Result<PierDocument>>): Promise<void> => {
  // What was said of the file before: a listener hears it said anew.
  dismiss(store, 'file-refused')
  dismiss(store, 'file-opened')
  const job = await asked
  if (!job.ok) return notify(store, { code: 'file-refused', detail: name, issues: job.issues })
  openDocument(store, job.value)
  notify(store, { code: 'file-opened', detail: name })
  tellChanges(pierHolder(store), job.issues)
}

export const openJobFile = (store: PierStore, file: File): Promise<void> => openJob(store, file.name, jobInFile(file))
