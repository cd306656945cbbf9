/** Times of many runs of one thing, in milliseconds. */
export type Timing = Readonly<{ median: number; low: number; high: number; runs: number }>

const quantile = (sorted: readonly number[], share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN

/** Kept so that no run is thrown away by the compiler as useless. */
export const sink: unknown[] = []

/** Median and the middle 80 % of `runs` runs, after `warmUp` runs that do not count. `after` is not timed. */
export const time = (
  run: () => unknown,
  { warmUp, runs }: { warmUp: number; runs: number },
  after: () => void = () => undefined,
): Timing => {
  const spent: number[] = []
  for (let i = 0; i < warmUp + runs; i++) {
    const start = performance.now()
    sink[0] = run()
    const end = performance.now()
    after()
    if (i >= warmUp) spent.push(end - start)
  }
  spent.sort((a, b) => a - b)
  return { median: quantile(spent, 0.5), low: quantile(spent, 0.1), high: quantile(spent, 0.9), runs }
}

const milliseconds = (value: number): string => value.toFixed(value < 0.1 ? 4 : value < 10 ? 3 : 1)

/** One line of the report. */
export const line = (name: string, timing: Timing, note = ''): string =>
  `${name.padEnd(46)} ${milliseconds(timing.median).padStart(9)} ms   (${milliseconds(timing.low)} to ${milliseconds(timing.high)}, ${timing.runs} runs)${note ? `   ${note}` : ''}`
