import type { Mesh as SolidMesh } from 'manifold-3d'
import type { Cut, Mesh } from '../../src/core/model/solid.ts'
import type { PierSpec } from '../../src/core/model/spec.ts'
import type { Zone } from '../../src/core/model/zone.ts'
import type { Kit } from '../reference/bodies.ts'
import { blockOf, solidPart, solidPier } from '../reference/solidPier.ts'

/** Edges flatter than this are smooth in both: the sides of a turned body are, its rims are not. */
const sharpAngle = 40

/** The same zones cut open by the same sector, as meshes with normals, by Booleans. The caller frees the kit. */
export const solidMeshes = (kit: Kit, spec: PierSpec, zones: readonly Zone[], cut: Cut): SolidMesh[] => {
  const block = blockOf(zones)
  const meshes: SolidMesh[] = []
  const mesh = (body: ReturnType<typeof solidPart>): void => {
    meshes.push(kit.keep(body.calculateNormals(0, sharpAngle)).getMesh())
  }
  const sector = kit.wedge(cut.open, cut.facing, 3 * block.half, block.bottom - 1, spec.post.heightAboveGrade + 1)
  for (const [id, body] of solidPier(kit, spec, block)) mesh(id === 'post' ? body : kit.minus(body, sector))
  for (const zone of zones) if (zone.build === 'placed') for (const solid of zone.solids) mesh(solidPart(kit, solid))
  return meshes
}

/** Volume [m3] of a closed mesh of the solid library, from its triangles. */
export const solidMeshVolume = (mesh: SolidMesh): number => {
  const at = (vertex: number, axis: number): number => mesh.vertProperties[vertex * mesh.numProp + axis] ?? 0
  return volumeOf(mesh.triVerts, at)
}

/** Volume [m3] of one of our meshes, from its triangles. */
export const meshVolume = (mesh: Mesh): number => volumeOf(mesh.indices, (vertex, axis) => mesh.positions[vertex * 3 + axis] ?? 0)

const volumeOf = (triangles: Uint32Array, at: (vertex: number, axis: number) => number): number => {
  let six = 0
  for (let i = 0; i < triangles.length; i += 3) {
    const [a = 0, b = 0, c = 0] = triangles.subarray(i, i + 3)
    six +=
      at(a, 0) * (at(b, 1) * at(c, 2) - at(b, 2) * at(c, 1)) +
      at(a, 1) * (at(b, 2) * at(c, 0) - at(b, 0) * at(c, 2)) +
      at(a, 2) * (at(b, 0) * at(c, 1) - at(b, 1) * at(c, 0))
  }
  return six / 6
}
