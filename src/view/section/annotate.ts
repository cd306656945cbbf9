import type { PierResult } from '../../core/model/result.ts'
import type { Layer } from '../../state/appState.ts'
import type { Gone } from '../../state/goneBy.ts'
import { wordsOf } from '../../words/index.ts'
import { drawDimension } from './dimensionInk.ts'
import { type Box, InkPot, type Ink, type Pixel } from './ink.ts'
import { type Columns, type LabelWish, placeLabels, type PlacedLabel, type Side } from './labelColumns.ts'
import { noteDiameter } from './diameterNote.ts'
import { drawMarks } from './marksInk.ts'
import { type Dimension, pierDimensions, type Place } from './pierDimensions.ts'
import type { TypeSize } from './typeSize.ts'
import type { DrawWet } from './wetInk.ts'

/** How the picture is taken, as far as words and dimensions need to know. Plan angles in radians, lengths in metres. */
export type Sight = Readonly<{
  /** Where a point at a plan angle, radius and height falls on the screen. */
  point(theta: number, r: number, y: number): Pixel
  /** False where something stands before the point. */
  isShown(theta: number, r: number, y: number): boolean
  /** Plan angles of the two cut faces; null when nothing is cut open. */
  faces: Readonly<Record<Side, number>> | null
  /** Both faces lie in one plane, so that a diameter can be measured across them. */
  isFlat: boolean
  /** Half the side of the block. */
  half: number
  /** Pixels to a metre square on to the reader at the axis: what runs much shorter is too foreshortened to carry a figure. */
  perMetre: number
  /** What no figure may lie over: post, crown and fill, on the screen. */
  pier: readonly Box[]
}>

export type Say = Readonly<{ length(value: number): string; slope(value: number): string }>

export type AnnotationInput = Readonly<{
  result: PierResult
  sight: Sight
  layers: Readonly<Record<Layer, boolean>>
  /** What draws wet wood where its layer is on; null before it has been fetched. */
  drawWet: DrawWet | null
  say: Say
  size: TypeSize
  /** Names on the left, figures on the right, and the main ones only. */
  isNarrow: boolean
  wishes: readonly LabelWish[]
  columns: Columns
  sides: ReadonlyMap<string, Side>
  /** The picture, in pixels. */
  bounds: Box
  /** Years are looked at: what can be seen of the post is marked, and what can't. */
  isInYears?: boolean
  /** Share of such posts that is no longer sound at the year on show, where the picture has no materials that show it. */
  gone?: Readonly<Gone> | null
  /** While the picture moves: what was decided when it last stood still. Names stay where they are, figures keep their place on their lines. */
  kept?: Annotated | null
}>

export type Annotated = Readonly<{
  ink: Ink
  sides: ReadonlyMap<string, Side>
  labels: readonly PlacedLabel[]
  /** Which of its places each figure took. */
  seats: ReadonlyMap<string, number>
}>

/** Everything written and drawn over the picture, none of it over another. */
export function annotate(input: AnnotationInput): Annotated {
  const pot = new InkPot()
  const labels = !input.layers.labels
    ? []
    : input.kept
      ? followed(input.kept.labels, input.wishes)
      : placeLabels(input.wishes, input.columns, input.sides)
  const seats = new Map<string, number>()
  const dots = labels.map(({ anchor: [x, y] }): Box => ({ x: x - 5, y: y - 5, width: 10, height: 10 }))
  const taken: Box[] = [...labels.map((label) => label.box), ...dots, ...input.sight.pier]
  const soft: Box[] = labels.flatMap(leaderBoxes)
  for (const label of labels) {
    pot.plates.push({ ...label.box, id: label.id, lines: label.lines, kind: 'name' })
    drawLeader(pot, label)
  }
  const over = { ...input, soft }
  if (input.layers.dimensions) drawDimensions(pot, over, taken, seats)
  drawMarks(pot, over, taken, seats)
  if (input.layers.wetness) input.drawWet?.(pot, over, taken, seats)
  return { ink: pot, sides: new Map(labels.map((label) => [label.id, label.side])), labels, seats }
}

/** Labels where they stood, their leaders tied to where the anchors are now. */
const followed = (labels: readonly PlacedLabel[], wishes: readonly LabelWish[]): PlacedLabel[] =>
  labels.flatMap((label) => {
    const anchor = wishes.find(({ id }) => id === label.id)?.anchors[label.side]
    return anchor ? [{ ...label, anchor }] : []
  })

const leaderStep = 10

/** Small boxes along a leader, which figures keep clear of where they can. */
function leaderBoxes({ anchor, elbow }: Pick<PlacedLabel, 'anchor' | 'elbow'>): Box[] {
  const [dx, dy] = [anchor[0] - elbow[0], anchor[1] - elbow[1]]
  const steps = Math.max(1, Math.ceil(Math.hypot(dx, dy) / leaderStep))
  return Array.from({ length: steps + 1 }, (_, i) => ({
    x: elbow[0] + (dx * i) / steps - 2,
    y: elbow[1] + (dy * i) / steps - 2,
    width: 4,
    height: 4,
  }))
}

export function drawLeader(pot: InkPot, { anchor, elbow, end }: Pick<PlacedLabel, 'anchor' | 'elbow' | 'end'>): void {
  pot.line('leader', end, elbow, anchor)
  pot.dot('dot', anchor, 3)
}

function drawDimensions(
  pot: InkPot,
  { result, sight, say, size, isNarrow, bounds, kept, soft }: AnnotationInput & Readonly<{ soft: Box[] }>,
  taken: Box[],
  seats: Map<string, number>,
): void {
  const { faces } = sight
  const noted = { result, sight, say, size, bounds, kept, soft }
  if (!faces) {
    noteDiameter(pot, noted, taken, seats)
    return
  }
  const shaft = result.spec.hole.diameter / 2
  const project = ({ u, y }: Place): Pixel => sight.point(u < 0 ? faces.left : faces.right, Math.abs(u), y)
  const chosen = pierDimensions(result, faces.right, faces.left)
    .filter((one) => !isNarrow || one.first === 1)
    .map((one): Dimension => (isNarrow ? rightHand(one) : one))
    .filter((one) => one.side !== 'below' || sight.isFlat)
  for (const one of chosen.sort((a, b) => a.first - b.first || a.tier - b.tier)) {
    if (isForeshortened(one, project, sight) || !isDimensionShown(sight, faces, one)) continue
    const lines = figureLines(one, result, say)
    const seat = kept ? (kept.seats.get(one.id) ?? -1) : undefined
    const placed = drawDimension(
      pot,
      one,
      project,
      Math.max(shaft, Math.abs(one.to.u)),
      { size: size.figure, lines },
      { bounds, taken, soft, seat },
    )
    if (!placed) continue
    seats.set(one.id, placed.seat)
    taken.push(placed.box)
    soft.push(...placed.ticks)
    pot.plates.push({ ...placed.box, id: `figure-${one.id}`, lines, kind: 'figure' })
  }
  if (!seats.has('diameter')) noteDiameter(pot, noted, taken, seats)
}

const leastShown = 0.34

/** The length itself, or the face it is drawn on, is seen too much from the end. */
function isForeshortened({ from, to, side, value }: Dimension, project: (place: Place) => Pixel, { half, perMetre }: Sight): boolean {
  const away = side === 'left' ? -half : half
  const shown = (a: Pixel, b: Pixel, length: number): boolean => Math.hypot(a[0] - b[0], a[1] - b[1]) > leastShown * length * perMetre
  if (!shown(project(from), project(to), value)) return true
  return side !== 'below' && !shown(project({ u: away * 0.2, y: to.y }), project({ u: away, y: to.y }), half * 0.8)
}

/** On a narrow picture all figures stand on the right: wood nearest, the hole's depth beyond it. */
const rightHand = (one: Dimension): Dimension =>
  one.side === 'left'
    ? { ...one, side: 'right', tier: one.tier === 0 ? 0 : 2, from: { ...one.from, u: -one.from.u }, to: { ...one.to, u: -one.to.u } }
    : { ...one, tier: Math.min(one.tier, 1) }

/** Asked a finger's breadth outside and below its ends, since a point on an edge is neither seen nor hidden. What stands in the air is always shown. */
function isDimensionShown(sight: Sight, faces: Readonly<Record<Side, number>>, { from, to, tier }: Dimension): boolean {
  if (tier === 0) return true
  return [from, to].every(({ u, y }) => sight.isShown(u < 0 ? faces.left : faces.right, Math.abs(u) + 0.018, y - 0.012))
}

function figureLines(one: Dimension, { spec }: PierResult, say: Say): readonly string[] {
  const value = say.length(one.value)
  const { figures } = wordsOf('scene')
  switch (one.id) {
    case 'depth':
      return spec.site.slope > 0 ? figures.depthAtAxis(value) : figures.depth(value)
    case 'depth-left':
    case 'depth-right':
      if (one.edge === 'uphill') return figures.depthUphill(value)
      return one.edge === 'downhill' ? figures.depthDownhill(value) : figures.depthHere(value)
    case 'crown':
      return spec.top.shape === 'dished' ? figures.dish(value) : figures.crown(value)
    default:
      return figures[one.id](value)
  }
}
