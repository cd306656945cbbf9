import type { ZoneLabel } from '../model/saidIds.ts'
import { bars } from '../engineering/tables/bars.ts'
import { type LeaningPost, placeOn } from '../geometry/leaningPost.ts'
import { type ConvexSolid, placedSurface, placedVolume, type Point3, rod } from '../geometry/placed.ts'
import { radiusAlong } from '../geometry/radial.ts'
import { heightAt } from '../geometry/surface.ts'
import { placedVolumeBelow } from '../geometry/volumeBelow.ts'
import { surfaceOf } from '../geometry/fillStack.ts'
import { bracketKind } from '../kinds/index.ts'
import type { Role } from '../model/solid.ts'
import type { PlacedZone } from '../model/zone.ts'
import { cubicMetres } from '../units/quantity.ts'
import { leaningPart } from './leaningPart.ts'
import type { PierFrame } from './pierFrame.ts'

/** One part before it is measured; `displaces` is what it takes off other zones [m3], by their ids. */
export type Part = Readonly<{
  id: string
  role: Role
  label: ZoneLabel
  solids: readonly ConvexSolid[]
  /** Volume below grade, in the hole and in no other zone [m3]. */
  inHole: number
  displaces: Readonly<Record<string, number>>
  leaning?: LeaningPost
}>

/** Bars, bolts and bracket steel, and a post off plumb, with what each takes off its host's volume. */
export const placedZones = (frame: PierFrame): PlacedZone[] =>
  placedParts(frame).map(({ id, role, label, solids, inHole, displaces, leaning }) => ({
    build: 'placed',
    id,
    role,
    label,
    solids,
    volume: placedVolume(solids),
    surface: placedSurface(solids),
    inHole: cubicMetres(inHole),
    displaces: Object.fromEntries(Object.entries(displaces).flatMap(([zone, v]) => (v > 0 ? [[zone, cubicMetres(v)]] : []))),
    ...(leaning ? { leaning } : {}),
  }))

export const placedParts = (frame: PierFrame): Part[] => [
  ...(frame.leaning ? [leaningPart(frame, frame.leaning)] : []),
  ...throughBars(frame),
  ...verticalBars(frame),
  ...bracketParts(frame),
]

const placed = (
  id: string,
  role: Role,
  label: ZoneLabel,
  solids: readonly ConvexSolid[],
  displaces: Readonly<Record<string, number>>,
): Part => ({ id, role, label, solids, inHole: 0, displaces })

/** A place on the post: u across its width, h up along it from its foot [m]. */
const onPost = ({ foot, leaning }: PierFrame, u: number, h: number): Point3 => (leaning ? placeOn(leaning, u, h, 0) : [u, foot + h, 0])

/** Bars' centres up the post from its foot [m], lowest first. */
function upThePost({ bars: through }: PierFrame['spec']): number[] {
  const heights: number[] = []
  if (through) for (let i = 0; i < through.count; i++) heights.push(through.aboveFoot + i * through.spacing)
  return heights
}

/** Heights of the bars' centres [m], signed, lowest first. */
export const barLevels = (frame: PierFrame): number[] => upThePost(frame.spec).map((h) => onPost(frame, 0, h)[1])

function throughBars(frame: PierFrame): Part[] {
  const { bars: through } = frame.spec
  if (!through) return []
  const radius = bars[through.size].diameter.value / 2
  const half = through.length / 2
  const heights = upThePost(frame.spec)
  const inWood = Math.min(radiusAlong(frame.postOutline, 1, 0), half)
  const area = Math.PI * radius ** 2
  const displaces: Record<string, number> = { post: 2 * inWood * area * heights.length }
  for (const h of heights)
    for (const [from, to] of [
      [-half, -inWood],
      [inWood, half],
    ] as const) {
      const host = liftAt(frame, onPost(frame, (from + to) / 2, h)[1])
      if (host) displaces[host] = (displaces[host] ?? 0) + (to - from) * area
    }
  return [
    placed(
      'bars',
      'bar',
      'through-bars',
      heights.map((h) => rod(onPost(frame, -half, h), onPost(frame, half, h), radius)),
      displaces,
    ),
  ]
}

/** The lift, or the base, that holds a level [m]; null above the topmost lift's start only when there is no lift. */
export function liftAt(frame: PierFrame, y: number): string | null {
  if (frame.spec.hole.base && y < frame.fillBottom) return 'base'
  for (const lift of frame.lifts) if (lift.to.kind !== 'level' || y < lift.to.y) return lift.id
  return null
}

/** Bottom and top of the concrete or dry mix that vertical bars stand in, at radius `r` [m], signed; null when none is placed. */
export function mixBetween(frame: PierFrame, r: number): Readonly<{ bottom: number; top: number; hosts: readonly string[] }> | null {
  let from = frame.fillBottom
  let found: { bottom: number; top: number; hosts: string[] } | null = null
  for (const lift of frame.lifts) {
    const top = heightAt(surfaceOf(frame.profile, lift.to), lift.to.kind === 'grade' ? 0 : r, 0)
    if (lift.role === 'concrete' || lift.role === 'dry-mix') {
      if (found) {
        found.top = top
        found.hosts.push(lift.id)
      } else found = { bottom: from, top, hosts: [lift.id] }
    }
    from = top
  }
  return found
}

function verticalBars(frame: PierFrame): Part[] {
  const { verticalBars: upright } = frame.spec
  if (!upright) return []
  const radius = bars[upright.size].diameter.value / 2
  const ring = frame.profile.shaftRadius - upright.cover - radius
  const mix = mixBetween(frame, ring)
  if (!mix) return []
  const solids = Array.from({ length: upright.count }, (_, i) => {
    const turn = Math.PI / 4 + (2 * Math.PI * i) / upright.count
    const x = ring * Math.cos(turn)
    const z = ring * Math.sin(turn)
    return rod([x, mix.bottom + upright.cover, z], [x, mix.top - upright.cover, z], radius)
  })
  return [placed('vertical-bars', 'bar', 'vertical-bars', solids, { [mix.hosts[0] ?? 'concrete']: placedVolume(solids).value })]
}

function bracketParts(frame: PierFrame): Part[] {
  const { spec, bracketSite: site } = frame
  if (!site || spec.support.kind !== 'bracket') return []
  const { bracket } = spec.support
  const host = frame.lifts[frame.lifts.length - 1]?.id ?? 'concrete'
  return bracketKind(bracket.kind)
    .parts(bracket, site)
    .map((part) => {
      const inConcrete = placedVolumeBelow(part.solids, site.landing)
      const inWood = part.solids.reduce((sum, solid) => sum + woodShare(solid, frame.foot, site.postWidth), 0)
      return placed(part.id, part.role, part.label, part.solids, { [host]: inConcrete, post: inWood })
    })
}

/** Volume [m3] of a bracket part inside the post above its foot: level rods between its faces, plates in its slot. */
function woodShare(solid: ConvexSolid, foot: number, width: number): number {
  const half = width / 2
  if (solid.kind === 'rod') {
    if (solid.from[1] !== solid.to[1] || solid.from[1] <= foot) return 0
    const left = Math.max(Math.min(solid.from[0], solid.to[0]), -half)
    const right = Math.min(Math.max(solid.from[0], solid.to[0]), half)
    return Math.max(0, right - left) * Math.PI * solid.radius ** 2
  }
  if (solid.kind === 'prism') return 0
  const isInside = Math.abs(solid.centre[0]) + solid.half[0] < half
  const above = Math.max(0, Math.min(2 * solid.half[1], solid.centre[1] + solid.half[1] - foot))
  return isInside ? 4 * solid.half[0] * solid.half[2] * above : 0
}
