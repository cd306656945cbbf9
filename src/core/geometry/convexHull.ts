type Point = readonly [number, number]

/** Convex hull, anticlockwise (monotone chain). Source: definition. */
export function convexHull(points: readonly Point[]): Point[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1])
  const half = (list: readonly Point[]) => {
    const chain: Point[] = []
    for (const p of list) {
      while (chain.length > 1) {
        const a = chain[chain.length - 2]
        const b = chain[chain.length - 1]
        if (a && b && (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]) > 1e-15) break
        chain.pop()
      }
      chain.push(p)
    }
    return chain.slice(0, -1)
  }
  return [...half(sorted), ...half([...sorted].reverse())]
}

/** Area inside a closed outline, positive when it runs anticlockwise (shoelace). Source: definition. */
export const outlineArea = (points: readonly Point[]): number =>
  points.reduce((sum, [x, y], i) => {
    const [nx, ny] = points[(i + 1) % points.length] ?? [x, y]
    return sum + (x * ny - nx * y) / 2
  }, 0)
