import type { ZoneLabel } from '../model/saidIds.ts'
import type { Role } from '../model/solid.ts'
import { type Corner, corner, heightAlong } from './corner.ts'
import { crossingAngles, crossingPosition, type HoleProfile, pointOnLine, profileLine } from './holeProfile.ts'
import { axis, circle } from './radial.ts'
import type { SoilBlock } from './soilBlock.ts'
import { level, raised, type Surface } from './surface.ts'

/** A native layer between two planes parallel to grade; the lowest ends at the level underside of the block. */
export type NativeLayer = Readonly<{ id: string; role: Role; label: ZoneLabel; from: number; to: number | null }>

/** One swept body of native ground. `partOf` names the layer when a plane that passes through the hole's bottom splits it. */
export type NativeBody = Readonly<{ id: string; layer: NativeLayer; corners: Corner[]; breaks: number[]; partOf?: string }>

/** The native layers as swept bodies round and under the hole. */
export function nativeBodies(profile: HoleProfile, block: SoilBlock, layers: readonly NativeLayer[]): NativeBody[] {
  const crossesBottom = layers.some((layer) => layer.to !== null && passesThroughBottom(profile, layer.to))
  return layers.flatMap((layer): NativeBody[] => {
    const breaks = [...crossingAngles(profile, layer.from), ...(layer.to === null ? [] : crossingAngles(profile, layer.to))]
    if (!crossesBottom) return [{ id: layer.id, layer, corners: layerCorners(profile, block, layer), breaks }]
    const ring: NativeBody = { id: layer.id, layer, corners: followedLayer(profile, block, layer, ringLine), breaks }
    const under = plugCorners(profile, block, layer)
    return under ? [ring, { id: `${layer.id}-under`, layer, corners: under, breaks, partOf: layer.id }] : [ring]
  })
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

/** Does a plane `down` below grade [m] pass through the flat bottom of the hole? */
function passesThroughBottom(profile: HoleProfile, down: number): boolean {
  const reach = profile.bottomRadius * Math.hypot(profile.grade.gx, profile.grade.gz)
  return Math.abs(profile.bottom + down) < reach
}

/**
 * The polygon of a layer outside the hole. Corners are exact where each plane meets one stretch of the wall all
 * round; otherwise they follow the wall, clamped to the stretch between the layer's own two planes.
 */
function layerCorners(profile: HoleProfile, block: SoilBlock, layer: NativeLayer): Corner[] {
  const top = meets(profile, layer.from)
  const bottom = meets(profile, layer.to)
  return top === 'turning' || bottom === 'turning'
    ? followedLayer(profile, block, layer, profileLine)
    : steadyLayer(profile, block, layer, top, bottom)
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

type Line = (profile: HoleProfile, cos: number, sin: number, underside: number) => readonly (readonly [number, number])[]

/** The wall carried straight down from the edge of the bottom: what is left of the ground is a ring. */
const ringLine: Line = (profile, cos, sin, underside) => [[profile.bottomRadius, underside], ...profileLine(profile, cos, sin).slice(1)]

function followedLayer(profile: HoleProfile, block: SoilBlock, layer: NativeLayer, lineOf: Line): Corner[] {
  const top = raised(profile.grade, -layer.from)
  const bottom = layer.to === null ? block.underside : raised(profile.grade, -layer.to)
  const isSurface = layer.from === 0
  const last = profile.wall.length

  const inner = (surface: Surface, end: number | null) => (cos: number, sin: number) => {
    const line = lineOf(profile, cos, sin, block.bottom)
    const position = end ?? crossingPosition(line, surface, cos, sin)
    return position < 0 ? ([0, heightAlong(surface, 0, cos, sin)] as const) : pointOnLine(line, position)
  }
  const wallCorner = (index: number) => (cos: number, sin: number) => {
    const line = lineOf(profile, cos, sin, block.bottom)
    const high = isSurface ? last : crossingPosition(line, top, cos, sin)
    if (high < 0) return [0, heightAlong(top, 0, cos, sin)] as const
    const low = Math.max(crossingPosition(line, bottom, cos, sin), 0)
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

/**
 * The part of a layer straight under the hole's bottom; null when there is none. It reaches from radius `near` to `far`, where its
 * lower plane stays below the bottom; its upper side is the upper plane or the bottom, whichever is lower.
 */
function plugCorners(profile: HoleProfile, block: SoilBlock, layer: NativeLayer): Corner[] | null {
  const { bottom, bottomRadius: edge, grade } = profile
  const reach = edge * Math.hypot(grade.gx, grade.gz)
  if (layer.to !== null && -layer.to - reach >= bottom) return null
  const low = layer.to === null ? block.underside : raised(grade, -layer.to)
  const high = raised(grade, -layer.from)
  const meetsBottom = (surface: Surface, cos: number, sin: number) => (bottom - surface.a) / (surface.gx * cos + surface.gz * sin)
  const span = (cos: number, sin: number): readonly [near: number, far: number] => {
    const isBelowAtEdge = heightAlong(low, edge, cos, sin) < bottom
    if (low.a < bottom) return [0, isBelowAtEdge ? edge : meetsBottom(low, cos, sin)]
    return [isBelowAtEdge ? meetsBottom(low, cos, sin) : edge, edge]
  }
  const under = (r: number, cos: number, sin: number) => [r, Math.min(heightAlong(low, r, cos, sin), bottom)] as const
  const over = (r: number, cos: number, sin: number) => [r, Math.min(heightAlong(high, r, cos, sin), bottom)] as const
  const kink = (cos: number, sin: number) => {
    const [near, far] = span(cos, sin)
    const r = meetsBottom(high, cos, sin)
    return r > near && r < far ? r : far
  }
  const follows: readonly ((cos: number, sin: number) => readonly [number, number])[] = [
    (cos, sin) => under(span(cos, sin)[0], cos, sin),
    (cos, sin) => under(span(cos, sin)[1], cos, sin),
    (cos, sin) => over(span(cos, sin)[1], cos, sin),
    (cos, sin) => over(kink(cos, sin), cos, sin),
    (cos, sin) => over(span(cos, sin)[0], cos, sin),
  ]
  return follows.map((follow) => ({ follow, next: 'straight' }))
}
