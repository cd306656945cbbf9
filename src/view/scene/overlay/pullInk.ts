import { wordsOf } from '../../../words/index.ts'
import { takeSeat } from '../../section/dimensionInk.ts'
import { type Box, type Ink, InkPot, type Pixel, type Plate } from '../../section/ink.ts'
import { plateSize, type TypeSize, wrapped } from '../../section/typeSize.ts'
import type { PullState } from '../pull/pullState.ts'

/** Sizes of the arrow [px]: least and greatest length, half widths of shaft and head, length of the head. */
const arrow = { least: 26, most: 104, shaft: 4, head: 11, tip: 20, aside: 18 } as const
/** The arrow's foot stands no higher than this [px from the top]. */
const headroom = 132

type PullPlace = Readonly<{
  /** Where the post comes out of the pier, at its right face. */
  foot: Pixel
  bounds: Box
  taken: readonly Box[]
  size: TypeSize
  /** The pull in the user's units. */
  figure: string
}>

/** What is drawn of a pull: ink to lay over the other, and the boxes it takes. */
export type PullInk = Readonly<{ ink: Ink; boxes: readonly Box[] }>

const noteOf = (pulled: PullState): string | null => {
  const words = wordsOf('scene')
  if (pulled.kind === 'letting-go') return words.pull.illustrative
  return pulled.kind === 'unverified' ? words.pull.unverified : null
}

/** An arrow up beside the post, as long as the pull is large, with its figure; and a note on what the picture does not say. */
export function pullInk(pulled: PullState, place: PullPlace): PullInk | null {
  if (pulled.kind === 'none') return null
  const { bounds, size } = place
  const pot = new InkPot()
  const boxes: Box[] = []
  if (pulled.kind !== 'unverified') drawArrow(pot, boxes, pulled.kind === 'holding' ? pulled.share : 1, place)
  const note = noteOf(pulled)
  if (note !== null) {
    const lines = wrapped(note, size.name, bounds.width - 40)
    const { width, height } = plateSize(lines, size.name, 'name')
    const bottom = bounds.y + bounds.height - height - 2
    const seats = [0.5, 0.3, 0.7, 0.05].map((share): Box => ({ x: bounds.x + (bounds.width - width) * share, y: bottom, width, height }))
    seats.push({ x: bounds.x + (bounds.width - width) / 2, y: bounds.y, width, height })
    const box = takeSeat(seats, { bounds, taken: place.taken })?.box ?? seats[0]
    if (box) add(pot, boxes, { ...box, id: 'pull-note', lines, kind: 'name' })
  }
  return { ink: pot, boxes }
}

const add = (pot: InkPot, boxes: Box[], plate: Plate): void => {
  pot.plates.push(plate)
  boxes.push(plate)
}

function drawArrow(pot: InkPot, boxes: Box[], share: number, { foot, size, figure }: PullPlace): void {
  const x = foot[0] + arrow.aside
  const base = Math.max(headroom, foot[1] - 6)
  const length = arrow.least + (Math.min(arrow.most, base - 26) - arrow.least) * share
  const top = base - length
  const neck = top + arrow.tip
  pot.shape(
    'arrow',
    [x - arrow.shaft, base],
    [x - arrow.shaft, neck],
    [x - arrow.head, neck],
    [x, top],
    [x + arrow.head, neck],
    [x + arrow.shaft, neck],
    [x + arrow.shaft, base],
  )
  boxes.push({ x: x - arrow.head, y: top, width: 2 * arrow.head, height: length })
  const lines = [...wordsOf('scene').pull.figure(figure)]
  const plate = plateSize(lines, size.figure, 'figure')
  add(pot, boxes, { x: x + arrow.head + 5, y: Math.max(4, top - 4), ...plate, id: 'pull', lines, kind: 'figure' })
}

/** Ink over ink. */
export const overlaid = (under: Ink, over: Ink): Ink => ({
  paths: { ...under.paths, arrow: under.paths.arrow + over.paths.arrow },
  plates: [...under.plates, ...over.plates],
})
