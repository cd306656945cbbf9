/** Line segments, [n][2][3] metres, broken into dashes `dash` long with gaps `gap` [m]; each segment starts and ends on a dash. */
export function dashes(segments: Float32Array, dash: number, gap: number): Float32Array {
  const out: number[] = []
  for (let i = 0; i < segments.length; i += 6) {
    const [ax, ay, az, bx, by, bz] = segments.subarray(i, i + 6) as unknown as [number, number, number, number, number, number]
    const length = Math.hypot(bx - ax, by - ay, bz - az)
    if (!(length > 0)) continue
    const count = Math.max(1, Math.round((length + gap) / (dash + gap)))
    const period = (length + gap) / count
    for (let k = 0; k < count; k++) {
      const s = (k * period) / length
      const t = Math.min(1, (k * period + period - gap) / length)
      out.push(ax + (bx - ax) * s, ay + (by - ay) * s, az + (bz - az) * s, ax + (bx - ax) * t, ay + (by - ay) * t, az + (bz - az) * t)
    }
  }
  return Float32Array.from(out)
}
