import { postSections } from '../engineering/tables/postSections.ts'
import { holeProfile, type HoleProfile, wallRadius } from '../geometry/holeProfile.ts'
import { laidVolume } from '../geometry/laidVolume.ts'
import { plane } from '../geometry/surface.ts'
import { fillKind } from '../kinds/index.ts'
import type { PierSpec } from '../model/spec.ts'
import { toSI } from '../units/factors.ts'
import { innerRadiusOf, type Standpoint, standpoint } from './standing.ts'

/** The least that must be left of a shaft, a layer or a wall for it to be there at all, 1 in [m]. Set here, no source. */
export const leastLeft = toSI(1, 'in')

/** What rules compare, all in metres: heights are signed, up from grade at the axis; radii and widths are not. */
export type Dimensions = Readonly<{
  radius: number
  bottom: number
  /** Top of the gravel or concrete base, or the bottom. */
  baseTop: number
  /** Lowest the post's foot may stand: on the base, or on the footing pad upon it. */
  seat: number
  /** Radius of the wall at a height; the shaft's from the downhill edge of grade up. */
  wallAt: (y: number) => number
  /** Grade on the downhill side at radius r. */
  gradeAt: (r: number) => number
  post: Readonly<{ width: number; depth: number; across: number; radius: number }>
  /** Radius at which the top's rise is measured. */
  inner: number
  /** Level rim and height at `inner` of a finished top; null where the fill ends at grade. */
  top: Readonly<{ rim: number; inner: number }> | null
  /** Lowest height of the finished top or of grade within the hole, between the post and radius r. */
  lowestTop: (r: number) => number
  /** Highest level surface that has an inch of ground over it all along the wall, downhill too. */
  highestLevel: number
  /** The hole's wall and grade, for volumes. */
  profile: HoleProfile
}> &
  Pick<Standpoint, 'bracketSite' | 'foot' | 'round' | 'leaning'>

/** Nothing here throws on a pier that can't be built: rules say what is wrong with it. */
export function dimensions(spec: PierSpec): Dimensions {
  const { hole, site } = spec
  const radius = hole.diameter / 2
  const bottom = -hole.depth
  const profile = holeProfile(hole, plane(0, -site.slope, 0))
  const section = postSections[spec.post.section]
  const { width, depth } = section
  const across = section.shape === 'round' ? width : Math.hypot(width, depth)
  const baseTop = bottom + (hole.base?.thickness ?? 0)
  const gradeAt = (r: number) => -site.slope * r
  const inner = innerRadiusOf(spec)
  const top = finishedTop(spec, radius)
  const { bracketSite, foot, round, leaning } = standpoint(spec, top?.inner ?? 0)
  return {
    radius,
    bottom,
    baseTop,
    seat: baseTop + ('pad' in spec.fill ? spec.fill.pad : 0),
    wallAt: (y) => (y >= gradeAt(radius) ? radius : wallRadius(profile, y)),
    gradeAt,
    post: { width, depth, across, radius: across / 2 },
    inner,
    top,
    lowestTop: (r) => (top === null ? gradeAt(r) : Math.min(top.inner, topAt(top, inner, radius, r))),
    highestLevel: highestLevel(spec),
    bracketSite,
    foot,
    profile,
    round,
    leaning,
  }
}

function finishedTop(spec: PierSpec, radius: number): Dimensions['top'] {
  if (!fillKind(spec.fill.kind).hasTop) return null
  const rim = spec.site.slope * radius + spec.top.rim
  const rise = { flat: 0, crowned: spec.top.rise, dished: -spec.top.rise }[spec.top.shape]
  return { rim, inner: rim + rise }
}

/** Height of the finished top at radius r; where the post is as wide as the hole there is no top but the rim. */
const topAt = (top: NonNullable<Dimensions['top']>, inner: number, radius: number, r: number): number =>
  radius > inner ? top.inner + ((top.rim - top.inner) * (r - inner)) / (radius - inner) : top.rim

/** In a wider mouth the wall moves out as a level rises, and grade downhill comes down to meet it sooner. */
function highestLevel({ hole, site }: PierSpec): number {
  const radius = hole.diameter / 2
  const inShaft = -site.slope * radius - leastLeft
  if (hole.flare === null || inShaft <= -hole.flare.depth) return inShaft
  const out = (hole.flare.diameter / 2 - radius) / hole.flare.depth
  return (-site.slope * (radius + out * hole.flare.depth) - leastLeft) / (1 + site.slope * out)
}

/**
 * Height [m] of the top of the concrete or dry mix that ends below grade (a collar, bags at the foot) and the volume there is
 * room for [m3]; null for a fill without such a lift. Found by halving, since a bell or a post changes the room on the way up.
 */
export function mixLevel(volume: number, d: Dimensions): Readonly<{ y: number; room: number }> {
  const placed = (y: number) => laidVolume(d.profile, d.baseTop, y, d)
  const highest = d.highestLevel
  const room = placed(highest)
  if (!(volume < room)) return { y: highest, room }
  let low = d.baseTop
  let high = highest
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2
    if (placed(middle) < volume) low = middle
    else high = middle
  }
  return { y: (low + high) / 2, room }
}
