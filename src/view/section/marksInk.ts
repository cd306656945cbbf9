import { heightAlong } from '../../core/geometry/corner.ts'
import { plane } from '../../core/geometry/surface.ts'
import type { PierResult } from '../../core/model/result.ts'
import { wordsOf } from '../../words/index.ts'
import type { AnnotationInput } from './annotate.ts'
import { takeSeat } from './dimensionInk.ts'
import type { Box, InkPot, Pixel } from './ink.ts'
import type { Side } from './labelColumns.ts'
import { plateSize, wrapped } from './typeSize.ts'

/** With what words had better not cover. */
export type Marked = AnnotationInput & Readonly<{ soft: readonly Box[] }>

/** Water level, frost line and slope: the marks of the drafting notes 3.5 and 3.6, with their figures. */
export function drawMarks(pot: InkPot, input: Marked, taken: Box[], seats: Map<string, number>): void {
  if (input.layers.water) drawWater(pot, input, taken, seats)
  if (input.layers.frost) drawFrost(pot, input, taken, seats)
  if (input.layers.dimensions) drawDownhill(pot, input, taken, seats)
}

/** Puts words at the first free place [px, middle of the plate]; false when none is free. */
export function putWords(
  pot: InkPot,
  id: string,
  words: string | readonly string[],
  kind: 'figure' | 'water',
  { size, bounds, kept, soft }: Marked,
  places: readonly Pixel[],
  taken: Box[],
  seats: Map<string, number>,
): boolean {
  const lines = typeof words === 'string' ? [words] : words
  const { width, height } = plateSize(lines, size.figure, 'figure')
  const boxes = places.map(([x, y]): Box => ({ x: x - width / 2, y: y - height / 2, width, height }))
  const seated = takeSeat(boxes, { bounds, taken, soft, seat: kept ? (kept.seats.get(id) ?? -1) : undefined })
  if (!seated) return false
  seats.set(id, seated.seat)
  taken.push(seated.box)
  pot.plates.push({ ...seated.box, id, lines, kind })
  return true
}

/** Words closer to what they name than this need no leader [px]. */
const near = 30
/** On a narrow picture words stand in a column at the right, no wider than this [px]. */
const narrowColumn = 118
/** Longer words are set in two lines [px]. */
const wideColumn = 190

/**
 * Words for a point of the picture, at the first free place, with a leader to the point unless they stand close by. `places` is asked
 * where there is room all round; a narrow picture keeps such words in a column at its right edge.
 */
export function putNote(
  pot: InkPot,
  id: string,
  words: string | readonly string[],
  kind: 'figure' | 'water',
  input: Marked,
  target: Pixel,
  places: () => readonly Pixel[],
  taken: Box[],
  seats: Map<string, number>,
): void {
  const { isNarrow, size } = input
  const lines = typeof words === 'string' ? wrapped(words, size.figure, isNarrow ? narrowColumn : wideColumn) : words
  const seatsAsked = isNarrow ? atTheRight(lines, input, target) : places()
  if (!putWords(pot, id, lines, kind, input, seatsAsked, taken, seats)) return
  const plate = pot.plates.at(-1)
  if (!plate) return
  const x = Math.min(Math.max(target[0], plate.x), plate.x + plate.width)
  const y = Math.min(Math.max(target[1], plate.y + 4), plate.y + plate.height - 4)
  if (Math.hypot(target[0] - x, target[1] - y) < near) return
  pot.line('leader', [x, y], target)
  pot.dot('dot', target, 2.5)
}

function atTheRight(lines: readonly string[], { bounds, size }: Marked, [, y]: Pixel): Pixel[] {
  const { width, height } = plateSize(lines, size.figure, 'figure')
  const x = bounds.x + bounds.width - width / 2 - 1
  return [0, -1, 1, -2, 2, -3, 3, 4].map((step): Pixel => [x, y + step * 0.6 * (height + 6)])
}

/** Places along a level line on a face, over it and under it, from the middle outward. */
export function placesOn(
  input: AnnotationInput,
  theta: number,
  shares: readonly number[],
  height: (r: number) => number,
  over: number,
): Pixel[] {
  const hole = input.result.spec.hole.diameter / 2
  return [-over, over].flatMap((rise) =>
    shares.map((share): Pixel => {
      const r = hole + (input.sight.half - hole) * share
      const [x, y] = input.sight.point(theta, r, height(r))
      return [x, y + rise]
    }),
  )
}

/** Places for words on the ground beside the pier, on the faces given and at the heights given [m]. */
export const freePlaces = (input: AnnotationInput, thetas: readonly number[], heights: readonly number[]): Pixel[] =>
  thetas.flatMap((theta) => heights.flatMap((height) => placesOn(input, theta, [0.3, 0.5, 0.7, 0.9], () => height, input.size.figure)))

/** The cut face at `theta` is seen so much from its edge, or from above, that marks on it can't be told apart. */
function isEdgeOn({ sight: { point, half, perMetre } }: AnnotationInput, theta: number): boolean {
  const run = (a: Pixel, b: Pixel): number => Math.hypot(a[0] - b[0], a[1] - b[1])
  const [foot, out, up] = [point(theta, 0.2 * half, 0), point(theta, half, 0), point(theta, 0.2 * half, half)] as const
  return run(foot, out) < 0.28 * half * perMetre || run(foot, up) < 0.4 * half * perMetre
}

function drawWater(pot: InkPot, input: Marked, taken: Box[], seats: Map<string, number>): void {
  const { result, sight, say, size } = input
  const { waterTable } = result.spec.site
  if (waterTable === null || !sight.faces || !result.sheets.some((sheet) => sheet.id === 'water-table')) return
  const side: Side = input.isNarrow ? 'right' : 'left'
  const theta = sight.faces[side]
  const hole = result.spec.hole.diameter / 2
  const r = hole + (sight.half - hole) * 0.85
  if (isEdgeOn(input, theta) || !sight.isShown(theta, r, -waterTable + 0.01)) return
  const tip = sight.point(theta, r, -waterTable)
  taken.push({ x: tip[0] - 9, y: tip[1] - 15, width: 18, height: 16 })
  pot.shape('water', tip, [tip[0] - 7.5, tip[1] - 13], [tip[0] + 7.5, tip[1] - 13])
  const text = wordsOf('scene').marks.water(say.length(waterTable))
  const places = [
    ...placesOn(input, theta, [0.45, 0.6, 0.3], () => -waterTable, size.figure),
    [tip[0], tip[1] - 30] as const,
    [tip[0], tip[1] + 20] as const,
  ]
  putWords(pot, 'water', text, 'water', input, places, taken, seats)
}

/** Beyond every picture: a side that can't be seen keeps its places in the list, so that the others keep theirs. */
const nowhere: Pixel = [-1e6, -1e6]

/** At the right, or at the left where the words cover less. */
function drawFrost(pot: InkPot, input: Marked, taken: Box[], seats: Map<string, number>): void {
  const { result, sight, say, size } = input
  const { frostDepth } = result.spec.site
  const { faces } = sight
  if (!faces || input.isNarrow || !result.sheets.some((sheet) => sheet.id === 'frost-line')) return
  const places = [faces.right, faces.left].flatMap((theta) => {
    const height = (r: number): number => gradeAt(result, theta, r) - frostDepth
    const isSeen = !isEdgeOn(input, theta) && sight.isShown(theta, sight.half * 0.8, height(sight.half * 0.8) + 0.01)
    return placesOn(input, theta, [0.6, 0.5, 0.7, 0.4, 0.85], height, size.figure).map((place) => (isSeen ? place : nowhere))
  })
  putWords(pot, 'frost', wordsOf('scene').marks.frost(say.length(frostDepth)), 'figure', input, places, taken, seats)
}

export const gradeAt = ({ spec }: PierResult, theta: number, r: number): number => {
  const { slope, downhill } = spec.site
  return heightAlong(plane(0, -slope * Math.cos(downhill), -slope * Math.sin(downhill)), r, Math.cos(theta), Math.sin(theta))
}

const arrowLift = 24
/** From the middle of the words down to the arrow under them [px]. */
const arrowUnder = 18

/** An arrow down the slope, just above the ground, with the slope in words over it. */
function drawDownhill(pot: InkPot, input: AnnotationInput, taken: Box[], seats: Map<string, number>): void {
  const { result, sight, say, size, bounds, kept } = input
  const { slope, downhill } = result.spec.site
  if (slope <= 0 || input.isNarrow) return
  const [a, b] = [0.68, 0.98].map((share) => sight.point(downhill, sight.half * share, gradeAt(result, downhill, sight.half * share))) as [
    Pixel,
    Pixel,
  ]
  const run = Math.hypot(b[0] - a[0], b[1] - a[1])
  if (run < 34) return
  const lines = [wordsOf('scene').marks.downhill(say.slope(slope))]
  const plate = plateSize(lines, size.figure, 'figure')
  const [width, fall] = [Math.max(plate.width, Math.abs(b[0] - a[0]) + 8), Math.abs(b[1] - a[1])]
  const middle: Pixel = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2 - arrowLift]
  // Words and arrow take one place together.
  const boxes = [0, -24, -46].flatMap((rise) =>
    [0, 24, -24, 48].map((aside): Box => {
      const top = middle[1] + rise - arrowUnder - plate.height / 2
      return { x: middle[0] + aside - width / 2, y: top, width, height: plate.height / 2 + arrowUnder + fall / 2 + 4 }
    }),
  )
  const seated = takeSeat(boxes, { bounds, taken, seat: kept ? (kept.seats.get('downhill') ?? -1) : undefined })
  if (!seated) return
  seats.set('downhill', seated.seat)
  taken.push(seated.box)
  const centre = seated.box.x + width / 2
  pot.plates.push({ x: centre - plate.width / 2, y: seated.box.y, ...plate, id: 'downhill', lines, kind: 'figure' })
  const [dx, dy] = [(b[0] - a[0]) / run, (b[1] - a[1]) / run]
  const at: Pixel = [centre, seated.box.y + plate.height / 2 + arrowUnder]
  const tip: Pixel = [at[0] + (dx * run) / 2, at[1] + (dy * run) / 2]
  pot.line('dimension', [at[0] - (dx * run) / 2, at[1] - (dy * run) / 2], tip)
  pot.shape('arrow', tip, [tip[0] - 12 * dx + 4 * dy, tip[1] - 12 * dy - 4 * dx], [tip[0] - 12 * dx - 4 * dy, tip[1] - 12 * dy + 4 * dx])
}
