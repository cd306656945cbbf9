/** One friction angle: printed degrees, uplift coefficient Ku, shape coefficient m, depth ratio past which breakout is deep. */
export type BreakoutRow = Readonly<{ degrees: number; ku: number; m: number; criticalRatio: number }>
/** Breakout of circular and square plates in sand. Source: meyerhof-adams-1968, as given in das-foundation-engineering; from memory. */
export const breakoutFactors: readonly BreakoutRow[] = [
  { degrees: 20, ku: 0.856, m: 0.05, criticalRatio: 2.5 },
  { degrees: 25, ku: 0.888, m: 0.1, criticalRatio: 3 },
  { degrees: 30, ku: 0.92, m: 0.15, criticalRatio: 4 },
  { degrees: 35, ku: 0.936, m: 0.25, criticalRatio: 5 },
  { degrees: 40, ku: 0.96, m: 0.35, criticalRatio: 7 },
  { degrees: 45, ku: 0.96, m: 0.5, criticalRatio: 9 },
]
