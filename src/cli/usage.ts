import type { CalcOutcome } from './calcJob.ts'

/** How `calc` is called, on standard error. */
export const usage = (): CalcOutcome => ({
  out: '',
  err: [
    'usage: npm run --silent calc -- JOB.json    (- reads the job from standard input)',
    'Prints the result of a job file as JSON. Exit code 1: the job is not valid, every issue on a line of standard error.',
    '`npm run --silent schema` prints the JSON Schema of a job file; public/examples/ holds jobs to start from.',
    '',
  ].join('\n'),
  code: 2,
})
