import type { Parting } from '../../../core/derive/lettingGo.ts'
import { type ConvexSolid, middleOf, type Point3, prism, rod } from '../../../core/geometry/placed.ts'
import { placedMesh } from '../../../core/geometry/placedMesh.ts'
import type { PlanAngles } from '../../../core/geometry/planAngles.ts'
import type { Mesh } from '../../../core/model/solid.ts'
import type { PlacedZone, SweptZone, Zone } from '../../../core/model/zone.ts'
import { hardEdges } from '../pier/hardEdges.ts'
import { clipMesh, clipSegments, joinMeshes, other, type ClipSide } from './clipMesh.ts'
import { partingFace, type Run } from './partingFace.ts'

export type DrawnBody = Readonly<{ mesh: Mesh; edges: Float32Array }>
export type Pieces = Readonly<{ goes: DrawnBody; stays: DrawnBody }>

/** Two lines of edges as one. */
const both = (a: Float32Array, b: Float32Array): Float32Array => Float32Array.from([...a, ...b])

function partSwept(zone: SweptZone, { mesh, edges }: DrawnBody, parting: Parting, angles: PlanAngles): Pieces | null {
  if (parting.across === 'post-faces') return null
  const { level } = parting
  const above: ClipSide = (_, y) => y - level
  if (parting.across === 'level') {
    const run: Run = { r: 0, y: level, dr: 1, dy: 0, length: Infinity }
    return {
      goes: { mesh: joinMeshes(clipMesh(mesh, above), partingFace(zone, run, angles, false)), edges: clipSegments(edges, above) },
      stays: {
        mesh: joinMeshes(clipMesh(mesh, other(above)), partingFace(zone, run, angles, true)),
        edges: clipSegments(edges, other(above)),
      },
    }
  }
  const { radius, spread } = parting
  const within: ClipSide = (x, y, z) => radius + spread * (y - level) - Math.hypot(x, z)
  const disc: Run = { r: 0, y: level, dr: 1, dy: 0, length: radius }
  const flank: Run = { r: radius, y: level, dr: spread, dy: 1, length: Infinity }
  const face = (up: boolean): Mesh => {
    const side = partingFace(zone, flank, angles, up)
    return radius > 0 ? joinMeshes(partingFace(zone, disc, angles, up), side) : side
  }
  const upper = clipMesh(mesh, above)
  const upperEdges = clipSegments(edges, above)
  return {
    goes: { mesh: joinMeshes(clipMesh(upper, within), face(false)), edges: clipSegments(upperEdges, within) },
    stays: {
      mesh: joinMeshes(joinMeshes(clipMesh(mesh, other(above)), clipMesh(upper, other(within))), face(true)),
      edges: both(clipSegments(edges, other(above)), clipSegments(upperEdges, other(within))),
    },
  }
}

const between = (p: Point3, q: Point3, t: number): Point3 => [p[0] + (q[0] - p[0]) * t, p[1] + (q[1] - p[1]) * t, p[2] + (q[2] - p[2]) * t]

/** Middles of the two ends of a part that is cut across: a rod, a leaning post; null for plates. */
function middleLine(solid: ConvexSolid): [Point3, Point3] | null {
  if (solid.kind === 'box') return null
  if (solid.kind === 'rod') return [solid.from, solid.to]
  const middle = (ring: readonly Point3[]) => middleOf(prism(ring, ring))
  return [middle(solid.from), middle(solid.to)]
}

/** A part of it, from one share of its length to another. */
function stretchOf(solid: ConvexSolid, a: number, b: number): ConvexSolid {
  if (solid.kind === 'box') return solid
  if (solid.kind === 'rod') return rod(between(solid.from, solid.to, a), between(solid.from, solid.to, b), solid.radius)
  const ring = (t: number) => solid.from.map((p, i) => between(p, solid.to[i] ?? p, t))
  return prism(ring(a), ring(b))
}

/** Rods and leaning posts cut across: `goes` says of a piece, by the share along and the place of its middle, whether it leaves. */
function cutRods(solids: readonly ConvexSolid[], cutsOf: (from: Point3, to: Point3) => number[], goes: (p: readonly number[]) => boolean) {
  const pieces: { goes: ConvexSolid[]; stays: ConvexSolid[] } = { goes: [], stays: [] }
  for (const solid of solids) {
    const line = middleLine(solid)
    if (line === null) {
      pieces[goes(middleOf(solid)) ? 'goes' : 'stays'].push(solid)
      continue
    }
    const cuts = [0, ...cutsOf(...line).filter((t) => t > 1e-6 && t < 1 - 1e-6), 1].sort((p, q) => p - q)
    for (let i = 0; i + 1 < cuts.length; i++) {
      const [a, b] = [cuts[i] ?? 0, cuts[i + 1] ?? 1]
      pieces[goes(between(...line, (a + b) / 2)) ? 'goes' : 'stays'].push(stretchOf(solid, a, b))
    }
  }
  return pieces
}

function partPlaced(zone: PlacedZone, parting: Parting, postHalf: number, angles: PlanAngles): Pieces | null {
  const drawn = (solids: readonly ConvexSolid[]): DrawnBody => ({ mesh: placedMesh(solids), edges: hardEdges({ ...zone, solids }, angles) })
  const along = (a: number, b: number, at: number): number => (at - a) / (b - a)
  const level = parting.across === 'level' ? parting.level : null
  if (level === null && parting.across !== 'post-faces') return null
  const { goes, stays } =
    level === null
      ? cutRods(
          zone.solids,
          (from, to) => [along(from[0], to[0], -postHalf), along(from[0], to[0], postHalf)],
          (p) => Math.abs(p[0] ?? 0) < postHalf,
        )
      : cutRods(
          zone.solids,
          (from, to) => [along(from[1], to[1], level)],
          (p) => (p[1] ?? 0) > level,
        )
  return { goes: drawn(goes), stays: drawn(stays) }
}

/** The two pieces of a zone that parts, closed where they part. `postHalf` [m]: from the axis to the post's faces along +x, the way of the bars. */
export const partZone = (zone: Zone, drawn: DrawnBody, parting: Parting, angles: PlanAngles, postHalf: number): Pieces | null =>
  zone.build === 'swept' ? partSwept(zone, drawn, parting, angles) : partPlaced(zone, parting, postHalf, angles)
