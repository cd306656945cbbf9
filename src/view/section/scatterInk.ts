import type { ScatterClass } from '../../core/engineering/mix/dryPourScatter.ts'
import { dryPourOf } from '../../state/dryPourDerived.ts'
import { wordsOf } from '../../words/index.ts'
import type { Box, InkPot, LineStyle } from './ink.ts'
import { freePlaces, type Marked, putNote } from './marksInk.ts'
import { postRadius } from './postEdge.ts'

const grid = { rows: 22, columns: 5 } as const
const scatterStyle: Readonly<Record<ScatterClass, LineStyle | null>> = {
  sound: null,
  weak: 'weak',
  crumbly: 'crumbly',
  powder: 'powder',
}

/** One way in which a dry pour may have turned out: a picture, and no number comes of it. */
export function drawScatter(pot: InkPot, input: Marked, taken: Box[], seats: Map<string, number>): void {
  const { result, sight } = input
  const pour = dryPourOf(result.spec)
  const { faces } = sight
  if (!pour || !faces) return
  const wall = result.spec.hole.diameter / 2
  for (const [turn, theta] of [faces.left, faces.right].entries()) {
    const post = postRadius(result, theta) ?? 0
    for (let row = 0; row < grid.rows; row++)
      for (let column = 0; column < grid.columns; column++) {
        const across = turn === 0 ? column + 0.5 : column + 0.5 + grid.columns
        const found = scatterStyle[pour.classAt(across / grid.columns, (row + 0.5) / grid.rows)]
        if (found === null) continue
        const r = (share: number) => post + (wall - post) * share
        const y = (share: number) => pour.to - (pour.to - pour.from) * share
        const [a, b] = [column / grid.columns, (column + 1) / grid.columns]
        const [c, d] = [row / grid.rows, (row + 1) / grid.rows]
        pot.shape(
          found,
          sight.point(theta, r(a), y(c)),
          sight.point(theta, r(b), y(c)),
          sight.point(theta, r(b), y(d)),
          sight.point(theta, r(a), y(d)),
        )
      }
  }
  const middle = (pour.from + pour.to) / 2
  const heights = [middle, middle - 0.15, middle + 0.15, pour.from, middle + 0.3]
  const target = sight.point(faces.right, wall * 0.8, middle)
  putNote(
    pot,
    'scatter',
    wordsOf('scene').marks.scatter,
    'figure',
    input,
    target,
    () => freePlaces(input, [faces.right, faces.left], heights),
    taken,
    seats,
  )
}
