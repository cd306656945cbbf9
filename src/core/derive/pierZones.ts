import type { ZoneLabel } from '../model/saidIds.ts'
import { volumeBelow } from '../geometry/volumeBelow.ts'
import { type Corner, corner } from '../geometry/corner.ts'
import { liftCorners, type LiftEnd } from '../geometry/fillStack.ts'
import { heapCorners } from '../geometry/heap.ts'
import { sweptSurface, sweptVolume } from '../geometry/measure.ts'
import { axis } from '../geometry/radial.ts'
import { nativeBodies, type NativeLayer } from '../geometry/nativeGround.ts'
import { sheetCorners, soilBlock } from '../geometry/soilBlock.ts'
import { heightAt, level, raised, type Surface } from '../geometry/surface.ts'
import type { Role } from '../model/solid.ts'
import type { BaseMaterial } from '../model/spec.ts'
import type { Sheet, SweptZone, Zone } from '../model/zone.ts'
import { cubicMetres } from '../units/quantity.ts'
import type { PierFrame } from './pierFrame.ts'
import { placedZones } from './placedZones.ts'

type Body = Readonly<{
  id: string
  role: Role
  label: ZoneLabel
  corners: readonly Corner[]
  breaks?: readonly number[]
  inHole: number | 'all'
}>

function swept({ id, role, label, corners, breaks = [], inHole }: Body): SweptZone {
  const volume = sweptVolume(corners, breaks)
  return {
    build: 'swept',
    id,
    role,
    label,
    corners,
    breaks,
    volume,
    inHole: cubicMetres(inHole === 'all' ? volume.value : inHole),
    surface: sweptSurface(corners, breaks),
  }
}

/** Every zone of a pier, outermost first: native ground, base, lifts, heap, post, then placed parts; a leaning post is the first of those. */
export function pierZones(frame: PierFrame): Zone[] {
  const upright = frame.leaning ? [] : [post(frame)]
  const body = [...nativeGround(frame), ...base(frame), ...lifts(frame), ...heap(frame), ...upright]
  return [...body, ...placedZones(frame)]
}

export function nativeLayers({ spec }: PierFrame): NativeLayer[] {
  const { topsoil, lower } = spec.site
  const layers: NativeLayer[] = []
  if (topsoil > 0) layers.push({ id: 'topsoil', role: 'topsoil', label: 'topsoil', from: 0, to: topsoil })
  layers.push({ id: 'soil', role: 'soil', label: 'soil', from: topsoil, to: lower ? lower.from : null })
  if (lower) layers.push({ id: 'soil-lower', role: 'soil-lower', label: 'soil-lower', from: lower.from, to: null })
  return layers
}

const blockOf = (frame: PierFrame) => {
  const { hole, site } = frame.spec
  const widest = Math.max(hole.diameter, hole.bell?.diameter ?? 0, hole.flare?.diameter ?? 0) / 2
  return soilBlock(frame.profile, widest, Math.max(site.topsoil, site.lower?.from ?? 0, site.frostDepth))
}

function nativeGround(frame: PierFrame): SweptZone[] {
  return nativeBodies(frame.profile, blockOf(frame), nativeLayers(frame)).map(({ id, layer, corners, breaks, partOf }) => ({
    ...swept({ id, role: layer.role, label: layer.label, corners, breaks, inHole: 0 }),
    ...(partOf ? { partOf } : {}),
  }))
}

const bases: Readonly<Record<BaseMaterial, Pick<Body, 'role' | 'label'>>> = {
  gravel: { role: 'gravel', label: 'gravel-base' },
  concrete: { role: 'concrete', label: 'concrete-base' },
  'loose-soil': { role: 'backfill', label: 'loose-base' },
}

function base({ spec, profile, fillBottom, round }: PierFrame): SweptZone[] {
  if (!spec.hole.base) return []
  const corners = liftCorners(profile, profile.bottom, { kind: 'level', y: fillBottom }, round)
  return [
    swept({
      id: 'base',
      ...bases[spec.hole.base.material],
      corners,
      inHole: 'all',
    }),
  ]
}

/** The lifts with the level that each starts from [m] and its corners, bottom up. */
export function liftBodies({ profile, round, fillBottom, lifts: all }: PierFrame) {
  let from = fillBottom
  return all.map((lift) => {
    const body = { lift, from, corners: liftCorners(profile, from, lift.to, round) }
    if (lift.to.kind === 'level') from = lift.to.y
    return body
  })
}

const lifts = (frame: PierFrame): SweptZone[] =>
  liftBodies(frame).map(({ lift: { id, role, label, to }, from, corners }) => {
    const inHole = to.kind === 'top' ? belowGrade(frame, corners, from, to) : 'all'
    return swept({ id, role, label, corners, inHole })
  })

/** Below grade: exact when the finished top stays above grade all over the hole, else integrated. */
function belowGrade(frame: PierFrame, corners: readonly Corner[], from: number, end: LiftEnd): number {
  const { spec, profile, round, grade } = frame
  if (end.kind !== 'top') return sweptVolume(corners).value
  const slope = spec.site.slope
  const inner = frame.leaning ? 0 : frame.innerRadius
  const clear = spec.top.rim >= 0 && heightAt(end.surface, inner, 0) >= slope * inner
  if (clear) return sweptVolume(liftCorners(profile, from, { kind: 'grade' }, round)).value
  return volumeBelow(corners, grade)
}

function heap(frame: PierFrame): SweptZone[] {
  const { spec, end, profile, innerRadius: inner, postOutline, leaning, grade, standing } = frame
  if (spec.top.heaped <= 0 || end.kind !== 'top') return []
  const { corners, breaks } = heapCorners({
    top: end.surface,
    rim: profile.shaftRadius,
    grade,
    inner,
    height: spec.top.heaped,
    post: leaning ? axis : postOutline,
    block: blockOf(frame).outline,
    bracketFoot: standing ? null : frame.foot,
  })
  const inHole = spec.top.rim >= 0 && spec.top.shape !== 'dished' ? 0 : volumeBelow(corners, grade, breaks)
  return [swept({ id: 'heap', role: 'mulch', label: 'heap', corners, breaks, inHole })]
}

/** The post from its foot up to a surface. */
const postBetween = ({ postOutline, foot }: PierFrame, top: Surface): Corner[] => [
  corner(axis, level(foot), level(foot)),
  corner(postOutline, level(foot), 'upright'),
  corner(postOutline, top, top),
  corner(axis, top, 'upright'),
]

export const postCorners = (frame: PierFrame): Corner[] => postBetween(frame, level(frame.spec.post.heightAboveGrade))

function post(frame: PierFrame): SweptZone {
  const corners = postCorners(frame)
  return swept({
    id: 'post',
    role: 'wood',
    label: 'post',
    corners,
    inHole: frame.standing ? sweptVolume(postBetween(frame, frame.grade)).value : volumeBelow(corners, frame.grade),
  })
}

/** Water and frost, drawn as sheets in the native ground. Water is level; frost lies parallel to grade. */
export function pierSheets(frame: PierFrame): Sheet[] {
  const { spec, profile, grade } = frame
  const block = blockOf(frame)
  const sheets: Sheet[] = []
  const { waterTable, frostDepth } = spec.site
  if (waterTable !== null && waterTable < -block.bottom)
    sheets.push({ id: 'water-table', corners: sheetCorners(profile, block, level(-waterTable)) })
  if (frostDepth > 0) sheets.push({ id: 'frost-line', corners: sheetCorners(profile, block, raised(grade, -frostDepth)) })
  return sheets
}
