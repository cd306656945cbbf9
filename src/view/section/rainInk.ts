import type { MoistureResult } from '../../core/model/moistureResult.ts'
import { wordsOf } from '../../words/index.ts'
import type { AnnotationInput } from './annotate.ts'
import type { Box, InkPot, Pixel } from './ink.ts'
import { type Marked, putNote } from './marksInk.ts'

const arrow = 10
/** The way of rain lies this much over the ground, so that it is seen [m]. */
const over = 0.008

/** The way of rain along the fall line, with a head where it ends. At the post it turns and runs down along the wood: down the joint where one is open. Returns what words may not cover. */
export function drawRain(pot: InkPot, { sight, result }: AnnotationInput, { top, joint }: MoistureResult): Box[] {
  const { downhill } = result.spec.site
  const angle = (r: number): number => (r < 0 ? downhill + Math.PI : downhill)
  const points = top.line.map(([r, y]): Pixel => sight.point(angle(r), Math.abs(r), y + over))
  const last = top.line.at(-1)
  if (points.length < 2 || last === undefined) return []
  const runsDown = top.path.end === 'post' && result.spec.support.kind === 'embedded'
  if (runsDown) points.push(sight.point(angle(last[0]), Math.abs(last[0]), last[1] - downBy(joint)))
  pot.line('rain', ...points)
  const [end, before] = [points.at(-1), points.at(-2)]
  if (end && before) head(pot, before, end)
  const at = points[top.line.length - 1]
  if (runsDown && at) pot.dot('drop', at, 4.5)
  return points.slice(1).flatMap((point, i) => stepsOf(points[i] ?? point, point))
}

const step = 12
/** Small boxes along a stretch of it, which no words may cover. */
function stepsOf(from: Pixel, to: Pixel): Box[] {
  const count = Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) / step)
  return Array.from({ length: count }, (_, i) => {
    const way = (i + 1) / count
    return { x: from[0] + way * (to[0] - from[0]) - 3, y: from[1] + way * (to[1] - from[1]) - 3, width: 6, height: 6 }
  })
}

/** As deep as the joint goes; into soil a little [m]. */
const soaked = 0.14
const downBy = (joint: MoistureResult['joint']): number => (joint && joint.widest > 0 ? Math.min(joint.reach, 2 * soaked) : soaked)

function head(pot: InkPot, from: Pixel, to: Pixel): void {
  const run = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1
  const [dx, dy] = [(to[0] - from[0]) / run, (to[1] - from[1]) / run]
  const side = arrow * 0.45
  pot.shape(
    'drop',
    to,
    [to[0] - arrow * dx + side * dy, to[1] - arrow * dy - side * dx],
    [to[0] - arrow * dx - side * dy, to[1] - arrow * dy + side * dx],
  )
}

/** Where rain ends, in words. */
export function nameRain(pot: InkPot, input: Marked, { top }: MoistureResult, taken: Box[], seats: Map<string, number>): void {
  const { downhill } = input.result.spec.site
  const last = top.line.at(-1)
  if (!last) return
  const [x, y] = input.sight.point(last[0] < 0 ? downhill + Math.PI : downhill, Math.abs(last[0]), last[1] + over)
  const around = () => [0, 70, -70, 130, -130].flatMap((aside) => [-26, 24, -52, 50, -80].map((rise): Pixel => [x + aside, y + rise]))
  putNote(pot, 'rain', wordsOf('scene').marks.rain[top.path.end], 'water', input, [x, y], around, taken, seats)
}
