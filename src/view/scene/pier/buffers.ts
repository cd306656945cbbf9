import {
  BufferAttribute,
  BufferGeometry,
  DynamicDrawUsage,
  InstancedInterleavedBuffer,
  InterleavedBufferAttribute,
  Sphere,
  Vector3,
} from 'three'
import { LineSegmentsGeometry } from 'three/examples/jsm/lines/LineSegmentsGeometry.js'
import type { Mesh } from '../../../core/model/solid.ts'

/** Room is made in steps, so that a dragged cut, whose counts change at each step, mostly writes in place. */
const roomFor = (count: number): number => Math.max(96, Math.ceil(count * 1.25))

const attribute = (size: number, itemSize: number): BufferAttribute =>
  new BufferAttribute(new Float32Array(size * itemSize), itemSize).setUsage(DynamicDrawUsage)

const fill = (target: BufferAttribute, values: ArrayLike<number>): void => {
  target.array.set(values)
  target.clearUpdateRanges()
  target.addUpdateRange(0, values.length)
  target.needsUpdate = true
}

const sphereRound = (positions: Float32Array, sphere: Sphere): void => {
  let reach = 0
  let low = Infinity
  let high = -Infinity
  for (let i = 0; i < positions.length; i += 3) {
    const x = positions[i] as number
    const y = positions[i + 1] as number
    const z = positions[i + 2] as number
    reach = Math.max(reach, x * x + z * z)
    low = Math.min(low, y)
    high = Math.max(high, y)
  }
  sphere.center.set(0, (low + high) / 2, 0)
  sphere.radius = Math.sqrt(reach + ((high - low) / 2) ** 2)
}

/**
 * A core mesh as three draws it: group 0 outside faces, group 1 section faces. Writes into `old` where it has room;
 * else makes a new geometry and disposes the old one. The caller owns what is returned.
 */
export function toBufferGeometry(mesh: Mesh, old: BufferGeometry | null): BufferGeometry {
  const vertices = mesh.positions.length / 3
  const fits = old !== null && old.getAttribute('position').count >= vertices && (old.index?.count ?? 0) >= mesh.indices.length
  if (!fits) old?.dispose()
  const geometry = fits ? old : new BufferGeometry()
  if (!fits) {
    const room = roomFor(vertices)
    geometry.setAttribute('position', attribute(room, 3))
    geometry.setAttribute('normal', attribute(room, 3))
    geometry.setIndex(new BufferAttribute(new Uint32Array(roomFor(mesh.indices.length)), 1).setUsage(DynamicDrawUsage))
    geometry.boundingSphere = new Sphere(new Vector3(), 1)
  }
  fill(geometry.getAttribute('position') as BufferAttribute, mesh.positions)
  fill(geometry.getAttribute('normal') as BufferAttribute, mesh.normals)
  fill(geometry.index as BufferAttribute, mesh.indices)
  geometry.clearGroups()
  geometry.addGroup(0, mesh.outsideCount, 0)
  geometry.addGroup(mesh.outsideCount, mesh.indices.length - mesh.outsideCount, 1)
  geometry.setDrawRange(0, mesh.indices.length)
  if (geometry.boundingSphere) sphereRound(mesh.positions, geometry.boundingSphere)
  return geometry
}

/** Line segments, [n][2][3] metres, for lines of a set width on screen. Reuses `old` where it has room, else disposes it. */
export function toLineGeometry(segments: Float32Array, old: LineSegmentsGeometry | null): LineSegmentsGeometry {
  const start = old?.getAttribute('instanceStart') as InterleavedBufferAttribute | undefined
  const fits = old !== null && start !== undefined && start.data.array.length >= segments.length
  if (!fits) old?.dispose()
  const geometry = fits ? old : new LineSegmentsGeometry()
  if (!fits) {
    const buffer = new InstancedInterleavedBuffer(new Float32Array(roomFor(segments.length / 6) * 6), 6, 1)
    buffer.setUsage(DynamicDrawUsage)
    geometry.setAttribute('instanceStart', new InterleavedBufferAttribute(buffer, 3, 0))
    geometry.setAttribute('instanceEnd', new InterleavedBufferAttribute(buffer, 3, 3))
    geometry.boundingSphere = new Sphere(new Vector3(), 1)
  }
  const { data } = geometry.getAttribute('instanceStart') as InterleavedBufferAttribute
  data.array.set(segments)
  data.clearUpdateRanges()
  data.addUpdateRange(0, segments.length)
  data.needsUpdate = true
  geometry.instanceCount = segments.length / 6
  if (geometry.boundingSphere) sphereRound(segments, geometry.boundingSphere)
  return geometry
}
