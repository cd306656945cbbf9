/** F - a ln(1 + F/a) [m]; F alone where suction or deficit is nought. */
export const drawn = (a: number, f: number): number => (a > 0 ? f - a * Math.log1p(f / a) : f)

/** F such that `drawn(a, F)` is `goal`, both non-negative. The start is never below the root and the curve is convex: no step overshoots. */
export const solveDrawn = (a: number, goal: number): number => {
  if (a <= 0 || goal <= 0) return goal
  let f = goal + Math.sqrt(2 * a * goal)
  for (let step = 0; step < 60; step++) {
    const next = f - ((drawn(a, f) - goal) * (a + f)) / f
    if (!(next > 0) || Math.abs(next - f) <= 1e-15 * f) return next > 0 ? next : f
    f = next
  }
  return f
}
