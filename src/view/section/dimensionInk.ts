import { type Box, type InkPot, overlaps, type Pixel } from './ink.ts'
import type { Dimension, Place } from './pierDimensions.ts'
import { plateSize } from './typeSize.ts'

/** Sizes of the drafting notes (3.1, 3.2) in pixels: gap at the object, overrun past the dimension line, half a tick. */
const objectGap = 5
const overrun = 8
const tick = 5.5
/** First dimension line from the hole's edge, and from line to line. */
const firstTier = 38
const tierGap = 36
const below = 34
const nearTop = 22

type Project = (place: Place) => Pixel

const unit = (from: Pixel, to: Pixel): Pixel => {
  const dx = to[0] - from[0]
  const dy = to[1] - from[1]
  const length = Math.hypot(dx, dy) || 1
  return [dx / length, dy / length]
}
const along = (p: Pixel, d: Pixel, by: number): Pixel => [p[0] + d[0] * by, p[1] + d[1] * by]

/** Where words may stand: inside `bounds`, clear of `taken`. */
export type Room = Readonly<{
  bounds: Box
  taken: readonly Box[]
  /** What words had better not cover, where there is a choice: leaders, dots, ticks. */
  soft?: readonly Box[]
  /** The place to take, whatever stands there; -1 for none. Left out: the first free one. */
  seat?: number | undefined
}>
export type Seated = Readonly<{ box: Box; seat: number }>
/** A figure's place, with what its dimension line leaves for others to keep clear of. */
export type Dimensioned = Seated & Readonly<{ ticks: readonly Box[] }>
export type Figure = Readonly<{ size: number; lines: readonly string[] }>

/** The first free box, if there is one clear of what is soft too; or the one at the seat asked for. */
export function takeSeat(boxes: readonly Box[], room: Room): Seated | null {
  const seat = room.seat ?? firstFree(boxes, room)
  const box = boxes[seat]
  return box ? { box, seat } : null
}

function firstFree(boxes: readonly Box[], room: Room): number {
  const { soft = [] } = room
  const clear = boxes.findIndex((box) => isFree(box, room) && soft.every((other) => !overlaps(box, other)))
  return clear >= 0 ? clear : boxes.findIndex((box) => isFree(box, room))
}

export const isFree = (box: Box, { bounds, taken }: Room): boolean =>
  box.x >= bounds.x &&
  box.y >= bounds.y &&
  box.x + box.width <= bounds.x + bounds.width &&
  box.y + box.height <= bounds.y + bounds.height &&
  taken.every((other) => !overlaps(box, other, 3))

/**
 * Draws one dimension: extension lines with a gap at the object and an overrun, the dimension line with 45 degree ticks, and its
 * figure on a plate. `edge` [m] is the hole's edge on that side, from which tiers are counted. Returns the figure's box,
 * with its seat among the places tried, or null, with nothing drawn, when it found no room.
 */
export function drawDimension(
  pot: InkPot,
  dimension: Dimension,
  project: Project,
  edge: number,
  figure: Figure,
  room: Room,
): Dimensioned | null {
  const { from, to, side, tier } = dimension
  const a = project(from)
  const b = project(to)
  if (Math.hypot(a[0] - b[0], a[1] - b[1]) < 3) return null
  const away = side === 'left' ? -1 : 1
  const ends = side === 'below' ? belowEnds(a, b) : sideEnds(dimension, project, edge, away)
  const edgeAt = project({ u: away * edge, y: to.y })
  const onScreen = project({ u: away * (edge + 1), y: to.y })[0] < edgeAt[0] ? -1 : 1
  const seated = placeFigure(ends, side, tier, figure, room, onScreen)
  if (!seated) return null
  for (const [p, end] of [
    [a, ends[0]],
    [b, ends[1]],
  ] as const) {
    if (Math.hypot(end[0] - p[0], end[1] - p[1]) <= objectGap + 2) continue
    const way = unit(p, end)
    pot.line('dimension', along(p, way, objectGap), along(end, way, overrun))
  }
  const way = unit(ends[0], ends[1])
  const spare = isShort(ends, figure) ? 14 : 0
  pot.line('dimension', along(ends[0], way, -spare), along(ends[1], way, spare))
  for (const [x, y] of ends) pot.line('tick', [x - tick, y + tick], [x + tick, y - tick])
  return { ...seated, ticks: ends.map(([x, y]) => ({ x: x - tick, y: y - tick, width: 2 * tick, height: 2 * tick })) }
}

const belowEnds = (a: Pixel, b: Pixel): [Pixel, Pixel] => [
  [a[0], a[1] + below],
  [b[0], b[1] + below],
]

/** Ends of an upright dimension: extension lines run away from the hole along the face, the dimension line runs upright on it. */
function sideEnds({ from, to, tier }: Dimension, project: Project, edge: number, away: number): [Pixel, Pixel] {
  const out = unit(project({ u: away * edge, y: to.y }), project({ u: away * (edge + 1), y: to.y }))
  const base = along(project({ u: away * edge, y: to.y }), out, tier === 0 ? nearTop : firstTier + (tier - 1) * tierGap)
  const up = unit(project({ u: away * edge, y: to.y }), project({ u: away * edge, y: from.y + (from.y === to.y ? 1 : 0) }))
  const meet = (p: Pixel): Pixel => {
    const det = out[0] * up[1] - out[1] * up[0]
    if (Math.abs(det) < 0.05) return [base[0], p[1]]
    return along(p, out, ((base[0] - p[0]) * up[1] - (base[1] - p[1]) * up[0]) / det)
  }
  return [meet(project(from)), meet(project(to))]
}

/** Too short for its figure to leave both ticks in sight. */
const isShort = ([p, q]: readonly [Pixel, Pixel], { lines, size }: Figure): boolean =>
  Math.hypot(p[0] - q[0], p[1] - q[1]) < Math.max(size * 1.9, plateSize(lines, size, 'figure').height + 2 * tick)

/** The figure sits on its line, at the first of a few places along it that is free; beside the line when that is short. */
function placeFigure(
  ends: readonly [Pixel, Pixel],
  side: Dimension['side'],
  tier: number,
  figure: Figure,
  room: Room,
  away: number,
): Seated | null {
  const { width, height } = plateSize(figure.lines, figure.size, 'figure')
  const [p, q] = ends
  const at = (share: number): Pixel => [p[0] + (q[0] - p[0]) * share, p[1] + (q[1] - p[1]) * share]
  const boxes: Box[] = []
  /** Seats at the end of the list that are too far off to be taken before any nearer one. */
  let far = 0
  if (side !== 'below' && isShort(ends, figure)) {
    const [x, y] = at(0.5)
    for (const rise of [0, -0.2, 0.2, -0.4, 0.4, -0.6, 0.6, -0.9, 0.9, -1.2, 1.2, -1.8])
      boxes.push({ x: away > 0 ? x + 12 : x - 12 - width, y: y - height / 2 + rise * height, width, height })
    far = 1
  } else if (side === 'below' && Math.hypot(p[0] - q[0], p[1] - q[1]) < width + 3 * tick) {
    const [x, y] = at(0.5)
    // Under a line that it would cover from tick to tick.
    for (const drop of [0, 0.3]) boxes.push({ x: x - width / 2, y: y + tick + 2 + drop * height, width, height })
  } else {
    const start = side === 'below' ? 0.5 : 0.46 + (((tier + 2) % 3) - 1) * 0.17
    // Centred on the line; else grown away from the pier, so that a long figure never lies over it.
    for (const lean of [0.5, 0.3, 0.12])
      for (const step of [0, -0.1, 0.1, -0.2, 0.2, -0.3, 0.3, -0.4, 0.4]) {
        const share = start + step
        if (share < 0.06 || share > 0.94) continue
        const [x, y] = at(share)
        boxes.push({ x: away > 0 ? x - width * lean : x - width * (1 - lean), y: y - height / 2, width, height })
      }
  }
  return takeSeat(boxes.slice(0, boxes.length - far), room) ?? takeSeat(boxes, room)
}
