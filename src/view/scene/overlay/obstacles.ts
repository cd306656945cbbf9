import type { Cut } from '../../../core/model/solid.ts'
import type { Sight } from '../../section/annotate.ts'
import { type Box, InkPot, type Pixel } from '../../section/ink.ts'
import type { Columns, Side } from '../../section/labelColumns.ts'
import { focalPixels, type Frame, projectPoint } from '../camera/lens.ts'
import type { PierExtent } from '../camera/pierExtent.ts'
import { handlePixels, turnArc } from '../handles/handlePlaces.ts'

/** Height that the view bar takes at the foot of the picture, and room for the cut's handles [px]. */
export const barHeight = 52
export const handleRoom = 30

/** Pixel of a point at a plan angle, radius and height. */
export function groundPixel(theta: number, r: number, y: number, { pose, viewport }: Frame): Pixel {
  const [px, py] = projectPoint(pose, viewport, [r * Math.cos(theta), y, r * Math.sin(theta)])
  return [px, py]
}

const leastOpen = 0.04
/** Plan angles of the faces of a cut that is open far enough to be written on; null for any other. */
export const facesOf = ({ open, facing }: Cut): Readonly<Record<Side, number>> | null =>
  open > leastOpen ? { left: facing + open / 2, right: facing - open / 2 } : null

/** How a pier whose shaft has this radius [m] is seen, nothing before it. */
export const sightOf = (frame: Frame, cut: Cut, extent: PierExtent, shaft: number): Sight => ({
  point: (theta, r, y) => groundPixel(theta, r, y, frame),
  isShown: () => true,
  faces: facesOf(cut),
  isFlat: Math.abs(cut.open - Math.PI) < 0.5,
  half: extent.half,
  perMetre: focalPixels(frame.viewport.height) / frame.pose.distance,
  pier: pierBoxes(extent, shaft, frame),
})

/** Left and right edge of the block on the screen. */
function blockEdges({ half, bottom }: PierExtent, frame: Frame): [number, number] {
  const xs = [1, 3, 5, 7].flatMap((n) => [bottom, 0].map((y) => groundPixel((n * Math.PI) / 4, half * Math.SQRT2, y, frame)[0]))
  return [Math.min(...xs), Math.max(...xs)]
}

/** Boxes that no figure may cover: the fill, `shaft` its radius [m], and the post, in the plane through the axis that faces the reader. */
function pierBoxes({ holeBottom, pierTop, postTop }: PierExtent, shaft: number, frame: Frame): Box[] {
  const across = frame.pose.azimuth - Math.PI / 2
  const box = (radius: number, low: number, high: number): Box => {
    const points = [across, across + Math.PI].flatMap((theta) => [
      groundPixel(theta, radius, low, frame),
      groundPixel(theta, radius, high, frame),
    ])
    const xs = points.map((p) => p[0])
    const ys = points.map((p) => p[1])
    const x = Math.min(...xs)
    const y = Math.min(...ys)
    return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y }
  }
  return [box(shaft, holeBottom, Math.max(0, pierTop)), box(0.08, 0, postTop)]
}

export const handleBoxes = (cut: Cut, extent: PierExtent, { pose, viewport }: Frame): Box[] =>
  Object.values(handlePixels(cut, extent, pose, viewport, barHeight)).flatMap((at): Box[] =>
    at ? [{ x: at[0] - 18, y: at[1] - 18, width: 36, height: 36 }] : [],
  )

/** The arc on the floor that the turning handle runs along, as path data. */
export function arcPath(cut: Cut, extent: PierExtent, { pose, viewport }: Frame): string {
  const pot = new InkPot()
  const points = turnArc(cut, extent).map((point): Pixel => {
    const [x, y] = projectPoint(pose, viewport, point)
    return [x, y]
  })
  pot.line('arc', ...points)
  return pot.paths.arc
}

/** Where names stand: beside the block where there is room, else at the picture's edges; clear of handles and of what stands `over` it. `widest` name in px. */
export function nameColumns(
  cut: Cut,
  extent: PierExtent,
  frame: Frame,
  widest: number,
  isNarrow: boolean,
  over: readonly Box[] = [],
): Columns {
  const { width, height } = frame.viewport
  const edges = blockEdges(extent, frame)
  const left = isNarrow ? widest + 8 : Math.min(Math.max(edges[0] - handleRoom, widest + 8), width / 2 - 40)
  const right = Math.max(Math.min(edges[1] + handleRoom, width - widest - 8), width / 2 + 40)
  const taken: Record<Side, [number, number][]> = { left: [], right: [] }
  for (const box of [...handleBoxes(cut, extent, frame), ...over]) {
    if (box.x < left) taken.left.push([box.y, box.y + box.height])
    if (!isNarrow && box.x + box.width > right) taken.right.push([box.y, box.y + box.height])
  }
  return { left, right, top: 10, bottom: height - barHeight - 10, taken }
}
