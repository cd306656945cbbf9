import { type Corner, cornerPoint } from '../../../src/core/geometry/corner.ts'
import { breakAngles } from '../../../src/core/geometry/measure.ts'
import { integrateTurn } from '../../../src/core/geometry/quadrature.ts'

const isFlatSided = (c: Corner): boolean => 'at' in c && (c.at.kind === 'rectangle' || (c.at.kind === 'circle' && c.at.r === 0))

/**
 * How far a mesh's volume may lie from the exact one [m3]: chords instead of arcs take a share of step^2 / 6 off whatever
 * reaches from a curved face to the axis. Faces between two rectangles, or a rectangle and the axis, are exact.
 */
export function meshBound(corners: readonly Corner[], breaks: readonly number[], widestStep: number): number {
  const reach = integrateTurn(
    (cos, sin) => {
      let sum = 0
      corners.forEach((from, i) => {
        const to = corners[(i + 1) % corners.length]
        if (!to || (isFlatSided(from) && isFlatSided(to))) return
        const [r1, y1] = cornerPoint(from, cos, sin)
        const [r2, y2] = cornerPoint(to, cos, sin)
        sum += Math.abs((y2 - y1) * (r1 * r1 + r1 * r2 + r2 * r2)) / 6
      })
      return sum
    },
    breakAngles(corners, breaks),
  )
  return (widestStep ** 2 / 6) * reach
}
