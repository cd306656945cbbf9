import { readFileSync } from 'node:fs'
import { spelledOut } from '../export/numbers/issueLine.ts'
import { textOf } from '../export/textOf.ts'
import { calcJob, type CalcOutcome } from './calcJob.ts'
import { print } from './print.ts'
import { loadWords, subjects } from '../words/index.ts'

/** How `calc` is called, on standard error. */
const usage = (): CalcOutcome => ({
  out: '',
  err: [
    'usage: npm run --silent calc -- JOB.json    (- reads the job from standard input)',
    'Prints the result of a job file as JSON. Exit code 1: the job is not valid, every issue on a line of standard error.',
    '`npm run --silent schema` prints the JSON Schema of a job file; public/examples/ holds jobs to start from.',
    '',
  ].join('\n'),
  code: 2,
})

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
