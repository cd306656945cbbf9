/** Nodes and weights of the n-point Gauss–Legendre rule on [-1, 1]. Source: definition (roots of the Legendre polynomial by Newton). */
export function gaussLegendre(n: number): Readonly<{ nodes: readonly number[]; weights: readonly number[] }> {
  const nodes: number[] = []
  const weights: number[] = []
  for (let i = 0; i < n; i++) {
    let x = Math.cos((Math.PI * (i + 0.75)) / (n + 0.5))
    let slope = 1
    for (let pass = 0; pass < 100; pass++) {
      let p0 = 1
      let p1 = x
      for (let k = 2; k <= n; k++) {
        const p2 = ((2 * k - 1) * x * p1 - (k - 1) * p0) / k
        p0 = p1
        p1 = p2
      }
      slope = (n * (x * p1 - p0)) / (x * x - 1)
      const step = p1 / slope
      x -= step
      if (Math.abs(step) < 1e-16) break
    }
    nodes.push(x)
    weights.push(2 / ((1 - x * x) * slope * slope))
  }
  return { nodes, weights }
}

const rule = gaussLegendre(16)
const turn = 2 * Math.PI

/** Splits a full turn at `breaks` [rad, any order] and at every eighth, so that each piece is smooth. Ascending, from 0 to 2 pi. */
export function turnPieces(breaks: readonly number[]): number[] {
  const all = [...breaks.map((b) => ((b % turn) + turn) % turn), ...Array.from({ length: 9 }, (_, i) => (i * turn) / 8)]
  all.sort((p, q) => p - q)
  return all.filter((b, i) => i === 0 || b - (all[i - 1] ?? 0) > 1e-12)
}

export type TurnPoint = Readonly<{ cos: number; sin: number; weight: number }>

/** Points and weights [rad] of the rule over a full turn: 16 Gauss points on each smooth piece. */
export function turnPoints(breaks: readonly number[]): TurnPoint[] {
  const pieces = turnPieces(breaks)
  const points: TurnPoint[] = []
  for (let i = 1; i < pieces.length; i++) {
    const from = pieces[i - 1] ?? 0
    const half = ((pieces[i] ?? 0) - from) / 2
    for (let k = 0; k < rule.nodes.length; k++) {
      const theta = from + half * (1 + (rule.nodes[k] ?? 0))
      points.push({ cos: Math.cos(theta), sin: Math.sin(theta), weight: half * (rule.weights[k] ?? 0) })
    }
  }
  return points
}

/** Integral over a full turn of f(cos, sin). */
export const integrateTurn = (f: (cos: number, sin: number) => number, breaks: readonly number[]): number =>
  turnPoints(breaks).reduce((sum, { cos, sin, weight }) => sum + weight * f(cos, sin), 0)
