import { type Corner, cornerPoint, heightAlong } from './corner.ts'
import { crossingPosition, type HoleProfile, pointOnLine, profileLine } from './holeProfile.ts'
import { type Radial, rectangle } from './radial.ts'
import { level, type Surface } from './surface.ts'

export type SoilBlock = Readonly<{ outline: Radial; underside: Surface; half: number; bottom: number }>

/** Block of ground shown round the hole, sized from the hole, the slope and the deepest layer boundary [m]. */
export function soilBlock(profile: HoleProfile, widestRadius: number, deepestLayer: number): SoilBlock {
  const depth = -profile.bottom
  const half = Math.max(2.4 * widestRadius, widestRadius + 0.3, 0.62 * depth)
  const slope = Math.hypot(profile.grade.gx, profile.grade.gz)
  const drop = slope * half * Math.SQRT2
  const bottom = -Math.max(depth + Math.max(0.22 * depth, 0.2), deepestLayer + drop + 0.15, drop + 0.3)
  return { outline: rectangle(2 * half, 2 * half), underside: level(bottom), half, bottom }
}

/** Points of a sheet at a surface: from the wall of the hole (or the axis, when it passes under) out to the block. */
export function sheetCorners(profile: HoleProfile, block: SoilBlock, surface: Surface): readonly [Corner, Corner] {
  return [
    {
      follow: (cos, sin) => {
        const line = profileLine(profile, cos, sin)
        const position = crossingPosition(line, surface, cos, sin)
        return position < 0 ? [0, heightAlong(surface, 0, cos, sin)] : pointOnLine(line, position)
      },
      next: surface,
    },
    {
      follow: (cos, sin) => {
        const [edge] = cornerPoint({ at: block.outline, y: surface, next: 'upright' }, cos, sin)
        const r = Math.min(edge, daylightRadius(profile.grade, surface, cos, sin))
        return [r, heightAlong(surface, r, cos, sin)]
      },
      next: surface,
    },
  ]
}

/** Radius [m] at which a surface below grade comes out of the ground in the direction (cos, sin); infinite when it does not. */
function daylightRadius(grade: Surface, surface: Surface, cos: number, sin: number): number {
  const closing = (surface.gx - grade.gx) * cos + (surface.gz - grade.gz) * sin
  return closing <= 0 ? Number.POSITIVE_INFINITY : (grade.a - surface.a) / closing
}
