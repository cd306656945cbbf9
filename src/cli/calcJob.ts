import { derivePier } from '../core/derive/derivePier.ts'
import { parseJob } from '../core/spec/jobFile.ts'
import { issueLine } from '../export/numbers/issueLine.ts'
import { resultJson } from '../export/numbers/resultJson.ts'

/** What a command leaves behind. Exit code 0: done; 1: the job is not valid; 2: wrong use, or a file that can't be read. */
export type CalcOutcome = Readonly<{ out: string; err: string; code: 0 | 1 | 2 }>

/** The result of a job file's text as JSON; with errors, every one of them on a line of its own and no result. Warnings go into the JSON. */
export function calcJob(jobText: string): CalcOutcome {
  const job = parseJob(jobText)
  if (!job.ok) return { out: '', err: job.issues.map((issue) => `${issueLine(issue)}\n`).join(''), code: 1 }
  const result = resultJson(job.value, derivePier(job.value.spec), job.issues)
  return { out: `${JSON.stringify(result, null, 2)}\n`, err: '', code: 0 }
}
