import type { LettingGo } from '../../../core/derive/lettingGo.ts'
import { cutMeshes, specialAngles } from '../../../core/geometry/cutMeshes.ts'
import { reachAlong } from '../../../core/geometry/leaningPost.ts'
import { planAngles } from '../../../core/geometry/planAngles.ts'
import { postOf } from '../../../core/geometry/postOf.ts'
import { sheetMesh } from '../../../core/geometry/sheetMesh.ts'
import type { PierResult } from '../../../core/model/result.ts'
import { type Cut, type Mesh, nativeRoles } from '../../../core/model/solid.ts'
import type { Sheet, Zone } from '../../../core/model/zone.ts'
import { radians } from '../../../core/units/quantity.ts'
import { gradeOf, type PierExtent, pierExtent } from '../camera/pierExtent.ts'
import type { PostBounds } from '../materials/zoneMaterials.ts'
import { bentRods } from '../pull/bentRods.ts'
import { partZone } from '../pull/partZone.ts'
import { bentZone } from '../pull/pullState.ts'
import { hardEdges } from './hardEdges.ts'
import { liftedOffsets, type Offset } from './lifted.ts'
import { dashes, groundLine } from './lines.ts'

/** How a pier is looked at: its cut, and what of its site is shown with it. */
export type PierLook = Readonly<{ cut: Cut; cutPost: boolean; water: boolean; frost: boolean; soil: boolean; wetness: boolean }>

/** One body of the picture: a zone, or the piece of a zone that leaves while the rest of it stays. */
export type DrawnPart = Readonly<{
  zone: Zone
  isPiece: boolean
  mesh: Mesh
  /** Hard edges, [n][2][3] metres. */
  edges: Float32Array
  /** How much of a bend each vertex takes part in, 0..1; null for what does not bend. */
  share: Float32Array | null
  /** Goes up when the pier lets go. */
  goes: boolean
}>

/** Where a sheet meets the cut faces, [n][2][3] metres. */
export type DrawnSheet = Readonly<{ id: Sheet['id']; line: Float32Array }>

/** All that is drawn of a pier, as plain data. */
export type DrawnPier = Readonly<{
  result: PierResult
  look: PierLook
  /** How it lets go; null while it holds. */
  way: LettingGo | null
  parts: readonly DrawnPart[]
  sheets: readonly DrawnSheet[]
  /** Where the cut meets grade, [n][2][3] metres. */
  ground: Float32Array
  /** Where each zone is lifted to when the picture is taken apart [m], by id. */
  offsets: ReadonlyMap<string, Offset>
  extent: PierExtent
  /** Sides of the post; null when there is none. */
  post: PostBounds | null
}>

/** Uniform segments to the full turn. */
export const segments = 96

/** Sides of the post [m], read off its outline; null when there is none. */
export function postBounds(zones: readonly Zone[]): PostBounds | null {
  const post = postOf(zones)
  return (
    post && {
      width: 2 * reachAlong(post.outline, 0),
      depth: 2 * reachAlong(post.outline, Math.PI / 2),
      isRound: post.outline.kind === 'circle',
    }
  )
}

/** Makes the bodies and lines of a pier that is looked at in this way; `way` in which it lets go, null while it holds. */
export function drawnPier(result: PierResult, look: PierLook, way: LettingGo | null): DrawnPier {
  const { zones, spec } = result
  const { cut, cutPost } = look
  const meshes = cutMeshes(zones, cut, { segments, cutPost })
  const special = specialAngles(zones)
  const angles = planAngles(special, cut, segments)
  const uncut = cutPost ? angles : planAngles(special, { open: radians(0), facing: cut.facing }, segments)
  const post = postBounds(zones)
  const postHalf = (post?.width ?? 0) / 2
  const going = new Set(way?.moves ?? [])
  const bent = way ? bentZone(way.how) : null
  const parts: DrawnPart[] = []
  for (const zone of zones) {
    const mesh = meshes.get(zone.id)
    if (!mesh) continue
    const zoneAngles = zone.role === 'wood' ? uncut : angles
    const whole = { mesh, edges: hardEdges(zone, zoneAngles) }
    const parting = way?.parts.find((part) => part.zone === zone.id)
    const pieces = parting ? partZone(zone, whole, parting, zoneAngles, postHalf) : null
    const bend = zone.id === bent && zone.build === 'placed' ? bentRods(zone, zones, postHalf) : null
    const stays = pieces?.stays ?? whole
    parts.push({ zone, isPiece: false, ...stays, ...(bend ?? { share: null }), goes: going.has(zone.id) })
    if (pieces && !bend) parts.push({ zone, isPiece: true, ...pieces.goes, share: null, goes: true })
  }
  const meshOf = (id: string): Mesh | null => parts.find(({ zone, isPiece }) => zone.id === id && !isPiece)?.mesh ?? null
  const native = parts.flatMap(({ zone, isPiece, mesh }) => (look.soil && !isPiece && nativeRoles.has(zone.role) ? [mesh.outline] : []))
  return {
    result,
    look,
    way,
    parts,
    sheets: drawnSheets(result, look, special),
    ground: groundLine(native, gradeOf(spec.site)),
    offsets: liftedOffsets(zones, spec.hole.depth),
    extent: pierExtent(result, meshOf),
    post,
  }
}

function drawnSheets({ sheets }: PierResult, { cut, water, frost }: PierLook, special: readonly number[]): DrawnSheet[] {
  if (cut.open <= 1e-3) return []
  return sheets
    .filter(({ id }) => (id === 'water-table' ? water : frost))
    .map((sheet) => {
      const { outline } = sheetMesh(sheet, cut, { segments, special })
      return { id: sheet.id, line: sheet.id === 'water-table' ? outline : dashes(outline, 0.075, 0.045) }
    })
}
