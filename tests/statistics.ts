import { createRequire } from 'node:module'

/** The parts used of jstat, a general statistics library that carries no types of its own. */
type Statistics = Readonly<{
  beta: Readonly<{ inv: (p: number, alpha: number, beta: number) => number }>
  normal: Readonly<{ cdf: (x: number, mean: number, sd: number) => number; inv: (p: number, mean: number, sd: number) => number }>
  lognormal: Readonly<{ cdf: (x: number, mu: number, sigma: number) => number; inv: (p: number, mu: number, sigma: number) => number }>
  triangular: Readonly<{ inv: (p: number, low: number, high: number, peak: number) => number }>
  uniform: Readonly<{ inv: (p: number, low: number, high: number) => number }>
  /** With 1 and 1 the quantile stands at p (n - 1) steps from the first. */
  quantiles: (values: readonly number[], shares: readonly number[], alpha: number, beta: number) => readonly number[]
  binomial: Readonly<{ pdf: (k: number, n: number, p: number) => number }>
  weibull: Readonly<{
    cdf: (x: number, scale: number, shape: number) => number
    inv: (p: number, scale: number, shape: number) => number
    median: (scale: number, shape: number) => number
  }>
}>

export const { jStat } = createRequire(import.meta.url)('jstat') as Readonly<{ jStat: Statistics }>
