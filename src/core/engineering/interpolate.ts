/**
 * Straight-line interpolation in a table with ascending keys.
 * @param points pairs of key and value; shape [n][2], keys ascending [1]
 * @param at key to read at [1]
 * @returns value [1]; null outside the table's keys
 * Formula: y = y0 + (y1 - y0) (x - x0)/(x1 - x0)
 * Valid: inside the table. Outside: no value, never the nearest end.
 * Source: definition
 * Checked by: tests/core/engineering/interpolate.test.ts
 */
export function interpolate(points: readonly (readonly [number, number])[], at: number): number | null {
  for (let i = 0; i < points.length; i++) {
    const [x1, y1] = points[i] as readonly [number, number]
    if (at === x1) return y1
    if (at < x1) {
      if (i === 0) return null
      const [x0, y0] = points[i - 1] as readonly [number, number]
      return y0 + ((y1 - y0) * (at - x0)) / (x1 - x0)
    }
  }
  return null
}
