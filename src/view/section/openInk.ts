import type { MoistureResult, PostSide } from '../../core/model/moistureResult.ts'
import type { InkPot, LineStyle } from './ink.ts'
import type { Marked } from './marksInk.ts'

type Point = readonly [u: number, y: number]
/** From stripe to stripe [m]. */
const pitch = 0.05

/**
 * Stripes over the wood where decay is found and water meets air, as wide, of their distance, as the share of such posts that may no
 * longer be sound; dark in them the share that is not. `hand` is 1 on the right face and -1 on the left, so that they run through.
 */
export function drawOpen(
  pot: InkPot,
  { sight, gone }: Marked,
  at: Readonly<{ theta: number; hand: 1 | -1; post: number; side: PostSide; moisture: MoistureResult }>,
): void {
  if (!gone || !(gone.most > 0)) return
  const { theta, hand, post, side, moisture } = at
  const zone = moisture.groundline.bands[side]
  for (const stretch of moisture.profile) {
    if (stretch.side !== side || !stretch.waterAndAir) continue
    const [from, to] = [Math.max(stretch.from, zone.from), Math.min(stretch.to, zone.to)]
    if (!(to > from)) continue
    const [left, right] = hand > 0 ? [0, post] : [-post, 0]
    const box: readonly Point[] = [
      [left, from],
      [right, from],
      [right, to],
      [left, to],
    ]
    const first = Math.floor((from - right) / pitch)
    const last = Math.ceil((to - left) / pitch)
    for (let n = first; n <= last; n++) {
      const put = (style: LineStyle, share: number): void => {
        const shape = between(box, n * pitch, (n + share) * pitch)
        if (shape.length > 2) pot.shape(style, ...shape.map(([u, y]) => sight.point(theta, Math.abs(u), y)))
      }
      put('open', gone.most)
      if (gone.least > 0.004) put('gone', gone.least)
    }
  }
}

/** What of a shape lies where y - u is from `low` to `high`. */
const between = (shape: readonly Point[], low: number, high: number): readonly Point[] =>
  kept(
    kept(shape, ([u, y]) => y - u - low),
    ([u, y]) => high - (y - u),
  )

/** What of a shape lies where `over` is not below nought. */
function kept(shape: readonly Point[], over: (point: Point) => number): readonly Point[] {
  return shape.flatMap((point, i): Point[] => {
    const next = shape[(i + 1) % shape.length] ?? point
    const [a, b] = [over(point), over(next)]
    const own = a >= 0 ? [point] : []
    if (a >= 0 === b >= 0) return own
    const way = a / (a - b)
    return [...own, [point[0] + way * (next[0] - point[0]), point[1] + way * (next[1] - point[1])]]
  })
}
