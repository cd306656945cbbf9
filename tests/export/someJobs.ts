import type { PierDocument } from '../../src/core/model/spec.ts'
import { parseJob } from '../../src/core/spec/jobFile.ts'

const files = import.meta.glob<string>('../../public/examples/*.json', { query: '?raw', import: 'default', eager: true })

/** The jobs of the examples folder, read as a person's file is. */
export const someJobs: readonly (readonly [name: string, document: PierDocument])[] = Object.entries(files).map(([path, text]) => {
  const job = parseJob(text)
  if (!job.ok) throw new Error(`${path} is not a job`)
  return [path.replace(/^.*\/|\.json$/g, ''), job.value]
})

/** One of them by the end of its name. */
export const jobNamed = (end: string): PierDocument => {
  const found = someJobs.find(([name]) => name.endsWith(end))
  if (!found) throw new Error(`no example ends in ${end}`)
  return found[1]
}
