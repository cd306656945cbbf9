import type { Role } from '../model/solid.ts'
import { type Corner, corner, cornerPoint, heightAlong } from './corner.ts'
import { crossingAngles, crossingPosition, type HoleProfile, pointOnLine, profileLine } from './holeProfile.ts'
import { axis, circle, type Radial, rectangle } from './radial.ts'
import { level, raised, type Surface } from './surface.ts'

/** A native layer between two planes parallel to grade; the lowest ends at the level underside of the block. */
export type NativeLayer = Readonly<{ id: string; role: Role; label: string; from: number; to: number | null }>

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

type Meets = 'grade' | 'shaft' | 'under' | 'turning'

/** Where a plane parallel to grade, `down` below it [m], runs into the hole: one stretch all round, or different ones as it turns. */
function meets(profile: HoleProfile, down: number | null): Meets {
  if (down === 0) return 'grade'
  if (down === null) return 'under'
  const slope = Math.hypot(profile.grade.gx, profile.grade.gz)
  if (-down + profile.bottomRadius * slope < profile.bottom) return 'under'
  const shaft = profile.wall.findIndex((c) => c.at.kind === 'circle' && c.at.r === profile.shaftRadius && c.next === 'upright')
  const low = profile.wall[shaft]
  const high = profile.wall[shaft + 1]
  if (!low || !high) return 'turning'
  const reach = profile.shaftRadius * slope
  const belowTop = shaft + 1 === profile.wall.length - 1 ? true : -down + reach < high.y.a
  return belowTop && -down - reach > low.y.a ? 'shaft' : 'turning'
}

/**
 * The polygon of a native layer outside the hole. Corners are exact where each plane meets one stretch of the wall all
 * round; otherwise they follow the wall, clamped to the stretch between the layer's own two planes.
 */
export function layerCorners(profile: HoleProfile, block: SoilBlock, layer: NativeLayer): Corner[] {
  const top = meets(profile, layer.from)
  const bottom = meets(profile, layer.to)
  return top === 'turning' || bottom === 'turning' ? followedLayer(profile, block, layer) : steadyLayer(profile, block, layer, top, bottom)
}

function steadyLayer(profile: HoleProfile, block: SoilBlock, layer: NativeLayer, topMeets: Meets, bottomMeets: Meets): Corner[] {
  const top = raised(profile.grade, -layer.from)
  const bottom = layer.to === null ? block.underside : raised(profile.grade, -layer.to)
  const shaft = circle(profile.shaftRadius)
  const { wall } = profile
  const onShaft = wall.findIndex((c) => c.at.kind === 'circle' && c.at.r === profile.shaftRadius && c.next === 'upright')
  const first = bottomMeets === 'under' ? 0 : onShaft + 1
  const last = topMeets === 'grade' ? wall.length - 1 : onShaft
  const corners: Corner[] = [
    corner(bottomMeets === 'under' ? axis : shaft, bottom, bottom),
    corner(block.outline, bottom, 'upright'),
    corner(block.outline, top, top),
  ]
  if (topMeets === 'under') return [...corners, corner(axis, top, 'upright')]
  if (topMeets === 'shaft') corners.push(corner(shaft, top, 'upright'))
  for (let i = last; i >= first; i--) {
    const here = wall[i]
    if (here) corners.push(corner(here.at, here.y, i === 0 ? here.y : (wall[i - 1]?.next ?? 'upright')))
  }
  if (bottomMeets === 'under') corners.push(corner(axis, level(profile.bottom), 'upright'))
  return corners
}

function followedLayer(profile: HoleProfile, block: SoilBlock, layer: NativeLayer): Corner[] {
  const { grade } = profile
  const top = raised(grade, -layer.from)
  const bottom = layer.to === null ? block.underside : raised(grade, -layer.to)
  const isSurface = layer.from === 0
  const last = profile.wall.length
  const positionOf = (surface: Surface, line: readonly (readonly [number, number])[], cos: number, sin: number) =>
    crossingPosition(line, surface, cos, sin)

  const inner = (surface: Surface, end: number | null) => (cos: number, sin: number) => {
    const line = profileLine(profile, cos, sin)
    const position = end ?? positionOf(surface, line, cos, sin)
    return position < 0 ? ([0, heightAlong(surface, 0, cos, sin)] as const) : pointOnLine(line, position)
  }
  const wallCorner = (index: number) => (cos: number, sin: number) => {
    const line = profileLine(profile, cos, sin)
    const high = isSurface ? last : positionOf(top, line, cos, sin)
    if (high < 0) return [0, heightAlong(top, 0, cos, sin)] as const
    const low = Math.max(positionOf(bottom, line, cos, sin), 0)
    return pointOnLine(line, Math.min(Math.max(index, low), high))
  }
  return [
    { follow: inner(bottom, null), next: bottom },
    { at: block.outline, y: bottom, next: 'upright' },
    { at: block.outline, y: top, next: top },
    { follow: inner(top, isSurface ? last : null), next: 'straight' },
    ...Array.from({ length: last + 1 }, (_, i): Corner => ({ follow: wallCorner(last - i), next: 'straight' })),
  ]
}

/** Angles at which the layer's planes pass a corner of the wall. */
export const layerBreaks = (profile: HoleProfile, layer: NativeLayer): number[] => [
  ...crossingAngles(profile, layer.from),
  ...(layer.to === null ? [] : crossingAngles(profile, layer.to)),
]

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
