import type { PierDocument } from '../../core/model/spec.ts'
import { largestText } from '../../core/spec/jobText.ts'
import { writeJob } from '../../core/spec/writeJob.ts'
import { openDocument } from '../../state/actions/document.ts'
import { dismiss, notify } from '../../state/actions/notices.ts'
import type { PierStore } from '../../state/store.ts'
import { fileName } from '../../export/fileName.ts'
import { saveFile } from '../export/handOver.ts'

/** Hands the browser a text to save under a name. */
export const saveTextFile = (name: string, text: string, type = 'text/plain'): void => saveFile({ name, blob: new Blob([text], { type }) })

export const saveJobFile = (pier: PierDocument): void =>
  saveTextFile(fileName(pier.name, 'pier', 'json'), writeJob(pier), 'application/json')

/** A file that must hold more characters than are read at all is not even opened [bytes]. */
const largest = 4 * largestText

/** Opens a job file as one undo step. A file that is no job file, or whose pier can't be built, changes nothing and says all that is wrong. */
export const openJobFile = async (store: PierStore, file: File): Promise<void> => {
  dismiss(store, 'file-refused')
  dismiss(store, 'file-opened')
  if (file.size > largest) {
    const tooLarge = { code: 'file-too-large', severity: 'error', path: '', got: file.size, limit: largest } as const
    notify(store, { code: 'file-refused', detail: file.name, issues: [tooLarge] })
    return
  }
  const { parseJob } = await import('../../core/spec/jobFile.ts')
  const read = parseJob(await file.text())
  if (!read.ok) {
    notify(store, { code: 'file-refused', detail: file.name, issues: read.issues })
    return
  }
  openDocument(store, read.value)
  notify(store, { code: 'file-opened', detail: file.name })
}
