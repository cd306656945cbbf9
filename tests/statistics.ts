import { createRequire } from 'node:module'

/** The parts used of jstat, a general statistics library that carries no types of its own. */
type Statistics = Readonly<{
  beta: Readonly<{ inv: (p: number, alpha: number, beta: number) => number }>
  binomial: Readonly<{ pdf: (k: number, n: number, p: number) => number }>
  weibull: Readonly<{
    cdf: (x: number, scale: number, shape: number) => number
    inv: (p: number, scale: number, shape: number) => number
    median: (scale: number, shape: number) => number
  }>
}>

export const { jStat } = createRequire(import.meta.url)('jstat') as Readonly<{ jStat: Statistics }>
