import { BufferAttribute, BufferGeometry, DynamicDrawUsage, InstancedInterleavedBuffer, InterleavedBufferAttribute, Sphere } from 'three'
import { LineSegmentsGeometry } from 'three/examples/jsm/lines/LineSegmentsGeometry.js'
import { gradeOf } from '../camera/pierExtent.ts'
import { noWater } from '../materials/sharedUniforms.ts'
import type { DrawnPart } from '../pier/drawnPier.ts'
import { isShown, offsetOf, type PlacedPier } from '../pier/placedPier.ts'

/** One part of a pier that stands on the site. Parts of one `number` are lit together. */
export type Body = Readonly<{ standing: PlacedPier; part: DrawnPart; number: number }>
/** Line segments of a pier, [n][2][3] metres, and how far they are from their place in the ground. */
export type PierLines = Readonly<{ standing: PlacedPier; segments: Float32Array; off: Readonly<{ x: number; y: number; z: number }> }>

/** Room is made in steps, so that a dragged cut, whose counts change at each step, mostly writes in place. */
const roomFor = (count: number): number => Math.max(96, Math.ceil(count * 1.25))

const sizes = { position: 3, normal: 3, place: 4, own: 4 } as const
type Name = keyof typeof sizes
const names = Object.keys(sizes) as Name[]

/** Where a body is written: its first vertex, its first outside face and its first section face. */
type Spot = Readonly<{ body: Body; vertex: number; outside: number; section: number }>
/** Bodies of one look in one geometry: group 0 outside faces, group 1 section faces. */
export type BodyGeometry = BufferGeometry & { spots?: readonly Spot[] }

/** Stands for the sizes of all that is never culled: nothing is read off it. */
const anywhere = new Sphere()

const newBodies = (vertices: number, indices: number): BodyGeometry => {
  const geometry: BodyGeometry = new BufferGeometry()
  for (const name of names)
    geometry.setAttribute(name, new BufferAttribute(new Float32Array(vertices * sizes[name]), sizes[name]).setUsage(DynamicDrawUsage))
  geometry.setIndex(new BufferAttribute(new Uint32Array(indices), 1).setUsage(DynamicDrawUsage))
  geometry.boundingSphere = anywhere
  return geometry
}

/**
 * Writes the bodies of one look into `old` where it has room, and of those only the ones that have changed; else into a new geometry, and
 * disposes the old one. `position` and `normal` are those of the site [m]; `place` the place in the pier [m] and the turn of the pier
 * [rad]; `own` the depth below its grade, its water table, the radius without grass [m], and the number of the body.
 */
export function writeBodies(bodies: readonly Body[], old: BodyGeometry | null): BodyGeometry {
  const shown = bodies.filter(({ standing, part }) => isShown(standing, part.zone))
  const sum = (of: (part: DrawnPart) => number): number => shown.reduce((all, { part }) => all + of(part), 0)
  const outsides = sum(({ mesh }) => mesh.outsideCount)
  const indices = sum(({ mesh }) => mesh.indices.length)
  const vertices = sum(({ mesh }) => mesh.positions.length / 3)
  const fits = old !== null && old.getAttribute('position').count >= vertices && (old.index?.count ?? 0) >= indices
  if (!fits) old?.dispose()
  const geometry = fits ? old : newBodies(roomFor(vertices), roomFor(indices))
  const before = geometry.spots ?? []
  let [vertex, outside, section] = [0, 0, outsides]
  geometry.spots = shown.map((body, i) => {
    const spot = { body, vertex, outside, section }
    const was = before[i]
    const isAsBefore =
      was?.vertex === vertex &&
      was.outside === outside &&
      was.section === section &&
      was.body.standing === body.standing &&
      was.body.part === body.part &&
      was.body.number === body.number
    if (!isAsBefore) writeBody(geometry, spot)
    vertex += body.part.mesh.positions.length / 3
    outside += body.part.mesh.outsideCount
    section += body.part.mesh.indices.length - body.part.mesh.outsideCount
    return spot
  })
  geometry.clearGroups()
  geometry.addGroup(0, outsides, 0)
  if (indices > outsides) geometry.addGroup(outsides, indices - outsides, 1)
  geometry.setDrawRange(0, indices)
  return geometry
}

/** Hands a stretch of an attribute over to be uploaded. */
const written = (target: BufferAttribute, from: number, count: number): void => {
  target.addUpdateRange(from, count)
  target.needsUpdate = true
}

function writeBody(geometry: BodyGeometry, { body: { standing, part, number }, vertex, outside, section }: Spot): void {
  const { mesh, share } = part
  const { pier, rise, turn, at } = standing
  const off = offsetOf(standing, part)
  const { spec } = pier.result
  const { gx, gz } = gradeOf(spec.site)
  const water = pier.look.water && spec.site.waterTable !== null ? -spec.site.waterTable : noWater
  const bare = Math.max(spec.hole.diameter, spec.hole.flare?.diameter ?? 0) / 2 + 0.04
  const [c, s] = [Math.cos(turn), Math.sin(turn)]
  const count = mesh.positions.length / 3
  const { position, normal, place, own } = geometry.attributes as Record<Name, BufferAttribute>
  for (let i = 0; i < count; i++) {
    const [x, z] = [mesh.positions[3 * i] as number, mesh.positions[3 * i + 2] as number]
    const y = (mesh.positions[3 * i + 1] as number) + (share ? (share[i] as number) * rise : 0)
    const [nx, nz] = [mesh.normals[3 * i] as number, mesh.normals[3 * i + 2] as number]
    const [ox, oz] = [x + off.x, z + off.z]
    const v = vertex + i
    position.setXYZ(v, at[0] + c * ox - s * oz, at[1] + y + off.y, at[2] + s * ox + c * oz)
    normal.setXYZ(v, c * nx - s * nz, mesh.normals[3 * i + 1] as number, s * nx + c * nz)
    place.setXYZW(v, x, y, z, turn)
    own.setXYZW(v, gx * x + gz * z - y, water, bare, number)
  }
  for (const target of [position, normal, place, own]) written(target, vertex * target.itemSize, count * target.itemSize)
  const index = geometry.index as BufferAttribute
  const { indices, outsideCount } = mesh
  for (let i = 0; i < indices.length; i++)
    index.array[i < outsideCount ? outside + i : section + i - outsideCount] = vertex + (indices[i] as number)
  written(index, outside, outsideCount)
  written(index, section, indices.length - outsideCount)
}

/** Lines of piers where they stand on the site, [n][2][3] metres. */
export function linesOnSite(lines: readonly PierLines[]): Float32Array {
  const out = new Float32Array(lines.reduce((all, { segments }) => all + segments.length, 0))
  let to = 0
  for (const { standing, segments, off } of lines) {
    const { at, turn } = standing
    const [c, s] = [Math.cos(turn), Math.sin(turn)]
    for (let i = 0; i < segments.length; i += 3) {
      const [x, z] = [(segments[i] as number) + off.x, (segments[i + 2] as number) + off.z]
      out[to++] = at[0] + c * x - s * z
      out[to++] = at[1] + (segments[i + 1] as number) + off.y
      out[to++] = at[2] + s * x + c * z
    }
  }
  return out
}

/** Line segments, [n][2][3] metres, for lines of a set width on screen. Reuses `old` where it has room, else disposes it. */
export function writeLines(segments: Float32Array, old: LineSegmentsGeometry | null): LineSegmentsGeometry {
  const start = old?.getAttribute('instanceStart') as InterleavedBufferAttribute | undefined
  const fits = old !== null && start !== undefined && start.data.array.length >= segments.length
  if (!fits) old?.dispose()
  const geometry = fits ? old : new LineSegmentsGeometry()
  if (!fits) {
    const buffer = new InstancedInterleavedBuffer(new Float32Array(roomFor(segments.length / 6) * 6), 6, 1)
    buffer.setUsage(DynamicDrawUsage)
    geometry.setAttribute('instanceStart', new InterleavedBufferAttribute(buffer, 3, 0))
    geometry.setAttribute('instanceEnd', new InterleavedBufferAttribute(buffer, 3, 3))
    geometry.boundingSphere = anywhere
  }
  const { data } = geometry.getAttribute('instanceStart') as InterleavedBufferAttribute
  data.array.set(segments)
  data.clearUpdateRanges()
  data.addUpdateRange(0, segments.length)
  data.needsUpdate = true
  geometry.instanceCount = segments.length / 6
  return geometry
}
