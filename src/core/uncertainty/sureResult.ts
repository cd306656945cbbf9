import type { InputId } from './inputs.ts'

/** What is asked: how many tries, from which seed, and a pull to hold the answer against [N]. */
export type Study = Readonly<{ samples: number; seed: number; demand?: number | null }>

export const fewestSamples = 100
export const mostSamples = 200_000

/** How often, out of all tries. */
export type LinkCount = Readonly<{ id: string; count: number }>

export type Histogram = Readonly<{ from: number; width: number; counts: Uint32Array }>

/** One input moved alone to its 10th and 90th percentile, all others as entered. A capacity is null where there is none. */
export type Swing = Readonly<{
  id: InputId
  /** Draws: amounts added, or shares that multiply. */
  at: readonly [low: number, high: number]
  /** Allowable uplift at each [N]. */
  allowable: readonly [atLow: number | null, atHigh: number | null]
}>

/** A link that may not be counted leaves nothing to spread: the pier can't be verified, with or without ranges. */
export type Unverified = Readonly<{ kind: 'unverified'; links: readonly string[] }>

export type SpreadOfUplift = Readonly<{
  kind: 'spread'
  study: Study
  /** Allowable uplift of the pier as entered [N]. */
  asEntered: number
  /** Of the tries that have one, ascending [N]. */
  allowable: Float64Array
  /** 5th, 50th and 95th percentile of those [N]; null when no try has one. */
  quantiles: Readonly<{ low: number; middle: number; high: number }> | null
  histogram: Histogram | null
  /** Which link governed how often, most often first. */
  governing: readonly LinkCount[]
  /** Tries without an allowable: the first link that could not be counted, or 'not-possible'. */
  without: readonly LinkCount[]
  /** Tries that hold less than the demand; null without a demand. */
  below: number | null
  /** Widest first. */
  swings: readonly Swing[]
}>

export type SureResult = Unverified | SpreadOfUplift
