import { heightAlong } from '../../core/geometry/corner.ts'
import { plane } from '../../core/geometry/surface.ts'
import { wordsOf } from '../../words/index.ts'
import type { AnnotationInput } from './annotate.ts'
import { takeSeat } from './dimensionInk.ts'
import type { Box, InkPot, Pixel } from './ink.ts'
import { plateSize } from './typeSize.ts'

type Noted = Pick<AnnotationInput, 'result' | 'sight' | 'say' | 'size' | 'bounds'> &
  Readonly<{ soft: readonly Box[]; kept: AnnotationInput['kept'] }>

/** From the hole's edge to the middle of the note [px], outward and down. */
const steps: readonly Pixel[] = [
  [64, 34],
  [40, 42],
  [96, 30],
  [64, 58],
  [110, 8],
  [64, -34],
  [110, -30],
  [20, 60],
]

/**
 * The hole's diameter as a note on a leader, where it can't be measured across the cut: at the foot of the hole's wall on a cut face,
 * else at its rim in the ground.
 */
export function noteDiameter(
  pot: InkPot,
  { result, sight, say, size, bounds, kept, soft }: Noted,
  taken: Box[],
  seats: Map<string, number>,
): void {
  const { hole, site } = result.spec
  const shaft = hole.diameter / 2
  const grade = plane(0, -site.slope * Math.cos(site.downhill), -site.slope * Math.sin(site.downhill))
  const foot = hole.bell ? -0.5 * hole.depth : -hole.depth
  const onFaces = sight.faces
    ? ([sight.faces.right, sight.faces.left] as const).map((theta) => ({ theta, y: foot, out: 0.018, down: 0.012 }))
    : []
  const onRim = [0.25, 0.75, 1.25, 1.75].map((turn) => {
    const theta = turn * Math.PI
    return { theta, y: heightAlong(grade, shaft, Math.cos(theta), Math.sin(theta)), out: 0.01, down: -0.004 }
  })
  const axis = sight.point(0, 0, foot)[0]
  // All places stay in the list, so that a place keeps its number while the picture turns.
  const tried = [...onFaces, ...onRim].flatMap(({ theta, y, out, down }) => {
    const at = sight.point(theta, shaft, y)
    const isSeen = kept !== null && kept !== undefined ? true : sight.isShown(theta, shaft + out, y - down)
    const away = at[0] < axis ? -1 : 1
    return steps.map(([dx, dy]) => ({ at, middle: isSeen ? ([at[0] + away * dx, at[1] + dy] as const) : ([-1e6, -1e6] as const) }))
  })
  const lines = [wordsOf('scene').figures.hole(say.length(hole.diameter))]
  const plate = plateSize(lines, size.figure, 'figure')
  const boxes = tried.map(({ middle }): Box => ({ x: middle[0] - plate.width / 2, y: middle[1] - plate.height / 2, ...plate }))
  const seated = takeSeat(boxes, { bounds, taken, soft, seat: kept ? (kept.seats.get('hole') ?? -1) : undefined })
  const found = seated ? tried[seated.seat] : undefined
  if (!seated || !found) return
  seats.set('hole', seated.seat)
  taken.push(seated.box)
  pot.line('leader', found.middle, found.at)
  pot.dot('dot', found.at, 3)
  pot.plates.push({ ...seated.box, id: 'figure-hole', lines, kind: 'figure' })
}
