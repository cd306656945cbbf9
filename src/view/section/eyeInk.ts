import type { MoistureResult } from '../../core/model/moistureResult.ts'
import type { Box, InkPot, Pixel } from './ink.ts'
import type { Marked } from './marksInk.ts'

/** Half a mark, and half its eye [px]. */
const [disc, half, open] = [11, 7, 4.2]
/** The mark of what can be seen stands this much over what covers the post, or over its foot [m]. */
const over = 0.2

/** An eye on the post where an inspection sees it, and a crossed one where it is out of sight. Returns what words may not cover. */
export function drawEyes(pot: InkPot, { sight, bounds }: Marked, { profile, groundline }: MoistureResult): Box[] {
  const { faces } = sight
  const foot = profile.at(-1)
  if (!faces || !foot) return []
  const isBuried = groundline.at !== 'none'
  const at = (y: number): Pixel => sight.point(faces.right, 0, y)
  const seen = at((isBuried ? groundline.bands.axis.to : foot.from) + over)
  const boxes: Box[] = []
  const isInside = ([x, y]: Pixel): boolean => x > bounds.x + disc && y > bounds.y + disc && y < bounds.y + bounds.height - disc
  const mark = (place: Pixel, isSeen: boolean): void => {
    if (!isInside(place)) return
    eye(pot, place, isSeen)
    boxes.push({ x: place[0] - disc, y: place[1] - disc, width: 2 * disc, height: 2 * disc })
  }
  mark(seen, true)
  if (isBuried && groundline.bands.axis.from > foot.from) mark(at((groundline.bands.axis.from + foot.from) / 2), false)
  return boxes
}

const steps = [-1, -0.66, -0.33, 0, 0.33, 0.66, 1]

function eye(pot: InkPot, [x, y]: Pixel, isSeen: boolean): void {
  const lid = (way: 1 | -1): Pixel[] => steps.map((t): Pixel => [x + half * t, y + way * open * (1 - t * t)])
  pot.dot('disc', [x, y], disc)
  pot.line('eye', ...lid(-1))
  pot.line('eye', ...lid(1))
  pot.dot('eye', [x, y], 1.6)
  if (!isSeen) pot.line('eye', [x - half, y + half], [x + half, y - half])
}
