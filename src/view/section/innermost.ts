type Point = readonly [number, number]

/** Distance [m] of a point from the edges of a polygon, negative outside. */
export function depthInside(polygon: readonly Point[], x: number, y: number): number {
  let inside = false
  let nearest = Infinity
  for (let i = 0, j = polygon.length - 1; i < polygon.length; j = i++) {
    const [ax, ay] = polygon[i] as Point
    const [bx, by] = polygon[j] as Point
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) inside = !inside
    const dx = bx - ax
    const dy = by - ay
    const length = dx * dx + dy * dy
    const t = length > 0 ? Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / length)) : 0
    nearest = Math.min(nearest, Math.hypot(x - ax - t * dx, y - ay - t * dy))
  }
  return inside ? nearest : -nearest
}

const across = 12
const upward = 16

/**
 * Points well inside a polygon, the deepest first, at most `most` and apart from each other: where a leader may end.
 * Among points about equally deep one out along x, toward its label, and at middle height is taken.
 */
export function innermost(polygon: readonly Point[], most: number): Point[] {
  const xs = polygon.map((p) => p[0])
  const ys = polygon.map((p) => p[1])
  const left = Math.min(...xs)
  const low = Math.min(...ys)
  const width = Math.max(...xs) - left
  const height = Math.max(...ys) - low
  if (!(width > 0 && height > 0)) return []
  const found: { x: number; y: number; depth: number }[] = []
  for (let i = 0; i < across; i++)
    for (let j = 0; j < upward; j++) {
      const x = left + ((i + 0.5) * width) / across
      const y = low + ((j + 0.5) * height) / upward
      const depth = depthInside(polygon, x, y)
      if (depth > 0) found.push({ x, y, depth })
    }
  const deepest = Math.max(...found.map((f) => f.depth))
  const worth = (f: { x: number; y: number; depth: number }): number =>
    Math.min(f.depth, deepest * 0.8) +
    deepest * (0.12 * (1 - Math.abs((f.x - left) / width - 0.62)) - 0.1 * Math.abs((f.y - low) / height - 0.5))
  found.sort((a, b) => worth(b) - worth(a))
  const taken: Point[] = []
  for (const { x, y } of found) {
    if (taken.length >= most) break
    if (taken.every(([tx, ty]) => Math.hypot((tx - x) / width, (ty - y) / height) > 0.28)) taken.push([x, y])
  }
  return taken
}
