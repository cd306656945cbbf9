import { readFileSync } from 'node:fs'
import { spelledOut } from '../export/numbers/issueLine.ts'
import { textOf } from '../export/textOf.ts'
import { calcJob, type CalcOutcome } from './calcJob.ts'
import { print } from './print.ts'
import { usage } from './usage.ts'
import { loadWords, subjects } from '../words/index.ts'

const standardInput = 0

function run(args: readonly string[]): CalcOutcome {
  const [path] = args
  if (path === undefined || args.length > 1 || (path.startsWith('-') && path !== '-')) return usage()
  let job: string
  try {
    job = textOf(readFileSync(path === '-' ? standardInput : path))
  } catch (error) {
    return { out: '', err: `${spelledOut(`${path}: ${error instanceof Error ? error.message : 'cannot be read'}`)}\n`, code: 2 }
  }
  return calcJob(job)
}

await loadWords(subjects)
const { out, err, code } = run(process.argv.slice(2))
process.stderr.write(err)
print(out)
process.exitCode = code
