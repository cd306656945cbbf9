import { heightAlong } from '../../core/geometry/corner.ts'
import { reachAlong } from '../../core/geometry/leaningPost.ts'
import { postOf } from '../../core/geometry/postOf.ts'
import { plane } from '../../core/geometry/surface.ts'
import type { PierResult } from '../../core/model/result.ts'
import type { Role } from '../../core/model/solid.ts'
import type { Zone } from '../../core/model/zone.ts'

/** A place in the section: `u` metres from the axis, to the reader's right when positive, and height `y` [m]. */
export type Place = Readonly<{ u: number; y: number }>

export type DimensionId = 'diameter' | 'bell-diameter' | 'depth' | 'depth-left' | 'depth-right' | 'bar' | 'wood' | 'crown' | 'stand-off'

/**
 * One dimension: between two places, drawn on a side of the hole, `tier` 1 nearest. `value` in metres.
 * `first` says which to keep when there is little room: 1 before 2 before 3.
 */
export type Dimension = Readonly<{
  id: DimensionId
  from: Place
  to: Place
  side: 'left' | 'right' | 'below'
  tier: number
  value: number
  first: 1 | 2 | 3
  /** Of a depth at the hole's edge: which edge this is. `this` is neither the highest nor the lowest one. */
  edge?: 'uphill' | 'downhill' | 'this'
}>

const clear = 0.0005

/** Where the post's faces are in the section, as a distance from the axis [m]; what the reader sees of its width. */
function postHalf(zones: readonly Zone[], rightAngle: number): number {
  const post = postOf(zones)
  return post ? reachAlong(post.outline, rightAngle) : 0
}

/** Highest point of a finished top of concrete or mix, and of its rim [m]; null when nothing stands above the ground. */
function finishedTop({ zones, spec }: PierResult): Readonly<{ rim: number; peak: number; inner: number }> | null {
  for (const zone of zones) {
    if (zone.build !== 'swept' || zone.inHole === 0 || zone.role === 'wood') continue
    for (const [i, corner] of zone.corners.entries()) {
      if (!('at' in corner) || typeof corner.next === 'string' || corner.at.kind !== 'circle') continue
      const top = corner.next
      const onRim = Math.abs(corner.at.r - spec.hole.diameter / 2) < clear
      const after = zone.corners[(i + 1) % zone.corners.length]
      const runsInward =
        after && 'at' in after && (after.at.kind === 'rectangle' || (after.at.kind === 'circle' && after.at.r < corner.at.r - clear))
      if (!onRim || !runsInward || top.gx !== 0 || top.gz !== 0 || top.m === 0) continue
      const inner = after.at.kind === 'circle' ? after.at.r : Math.min(after.at.hx, after.at.hz)
      return { rim: top.a + top.m * corner.at.r, peak: top.a + top.m * inner, inner }
    }
  }
  return null
}

/** A section that runs within this angle of the fall line shows the edge uphill and the edge downhill [rad]. */
const nearFallLine = (3 * Math.PI) / 180

/** Which edge of the hole lies at a plan angle [rad], on ground that falls toward `downhill`. */
function edgeAt(angle: number, downhill: number): 'uphill' | 'downhill' | 'this' {
  const off = Math.abs(((((angle - downhill) % (2 * Math.PI)) + 3 * Math.PI) % (2 * Math.PI)) - Math.PI)
  if (off <= nearFallLine) return 'downhill'
  return Math.PI - off <= nearFallLine ? 'uphill' : 'this'
}

/**
 * Dimensions of a pier in the section whose right hand points along the plan angle `rightAngle` and its left hand along `leftAngle`
 * [rad]: straight across unless the cut is bent at the axis.
 */
export function pierDimensions(result: PierResult, rightAngle: number, leftAngle = rightAngle + Math.PI): Dimension[] {
  const { spec, zones } = result
  const { hole, site, support } = spec
  const grade = plane(0, -site.slope * Math.cos(site.downhill), -site.slope * Math.sin(site.downhill))
  const ground = (u: number): number => {
    const angle = u < 0 ? leftAngle : rightAngle
    return heightAlong(grade, Math.abs(u), Math.cos(angle), Math.sin(angle))
  }
  const shaft = hole.diameter / 2
  const bottomHalf = (hole.bell?.diameter ?? hole.diameter) / 2
  const bottom = -hole.depth
  const list: Dimension[] = []
  list.push({
    id: hole.bell ? 'bell-diameter' : 'diameter',
    from: { u: -bottomHalf, y: bottom },
    to: { u: bottomHalf, y: bottom },
    side: 'below',
    tier: 1,
    value: 2 * bottomHalf,
    first: 1,
  })
  const isSloped = Math.max(Math.abs(ground(shaft)), Math.abs(ground(-shaft)), Math.abs(ground(shaft) - ground(-shaft))) > 0.006
  if (isSloped) {
    const left = {
      id: 'depth-left',
      from: { u: -shaft, y: ground(-shaft) },
      to: { u: -bottomHalf, y: bottom },
      side: 'left',
      tier: 1,
      value: ground(-shaft) - bottom,
      first: 3,
      edge: edgeAt(leftAngle, site.downhill),
    } as const
    const right = {
      id: 'depth-right',
      from: { u: shaft, y: ground(shaft) },
      to: { u: bottomHalf, y: bottom },
      side: 'right',
      tier: 3,
      value: ground(shaft) - bottom,
      first: 3,
      edge: edgeAt(rightAngle, site.downhill),
    } as const
    list.push(left, right)
  }
  list.push({
    id: 'depth',
    from: { u: -shaft, y: 0 },
    to: { u: -bottomHalf, y: bottom },
    side: 'left',
    tier: isSloped ? 2 : 1,
    value: hole.depth,
    first: 1,
  })
  const half = postHalf(zones, rightAngle)
  // While it is built a part may not be there yet, and has no length.
  const has = (role: Role): boolean => zones.some((zone) => zone.role === role)
  if (support.kind === 'embedded' && has('wood')) {
    const foot = bottom + support.foot
    const axis = result.exposure.lines.find((line) => line.side === 'axis')
    if (axis && axis.belowGrade > clear)
      list.push({
        id: 'wood',
        from: { u: half, y: foot + axis.belowGrade },
        to: { u: half, y: foot },
        side: 'right',
        tier: 2,
        value: axis.belowGrade,
        first: 1,
      })
    if (spec.bars && has('bar')) {
      const reach = Math.max(half, (Math.abs(Math.cos(rightAngle)) * spec.bars.length) / 2)
      list.push({
        id: 'bar',
        from: { u: reach, y: foot + spec.bars.aboveFoot },
        to: { u: half, y: foot },
        side: 'right',
        tier: 1,
        value: spec.bars.aboveFoot,
        first: 2,
      })
    }
  }
  const top = finishedTop(result)
  if (top && Math.abs(top.peak - top.rim) > clear)
    list.push({
      id: 'crown',
      from: { u: Math.max(half, top.inner), y: top.peak },
      to: { u: shaft, y: top.rim },
      side: 'right',
      tier: 0,
      value: Math.abs(top.peak - top.rim),
      first: 2,
    })
  if (support.kind === 'bracket') {
    const post = zones.find((zone) => zone.role === 'wood')
    const first = post?.build === 'swept' ? post.corners[0] : undefined
    const foot = first && 'at' in first ? first.y.a : null
    if (foot !== null)
      list.push({
        id: 'stand-off',
        from: { u: -half, y: foot },
        to: { u: -half, y: foot - support.standOff },
        side: 'left',
        tier: 0,
        value: support.standOff,
        first: 1,
      })
  }
  return list
}
