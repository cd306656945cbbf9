import { Document, type Material, WebIO } from '@gltf-transform/core'
import { cutMeshes } from '../../core/geometry/cutMeshes.ts'
import type { Cut, Role } from '../../core/model/solid.ts'
import type { Zone } from '../../core/model/zone.ts'
import { roleColours } from '../roleColours.ts'

export type GlbInput = Readonly<{
  zones: readonly Zone[]
  /** The sector taken out, and whether the post is cut too, as the picture shows it. */
  cut: Cut
  cutPost: boolean
  /** Name of a zone for people. */
  nameOf(zone: Zone): string
  title: string
  /** What made the file. */
  generator: string
  /** Goes with the file: the standing caution, the date. */
  notes: Readonly<Record<string, string>>
}>

const segments = 128
const metallic: ReadonlySet<Role> = new Set<Role>(['bar', 'steel'])

/**
 * Every zone as a node of a binary glTF 2.0 file, in metres, y up, grade at the axis in the origin, in plain materials. A node's
 * extras tell its id, what it is made of and its volume of record.
 */
export async function glbFile({ zones, cut, cutPost, nameOf, title, generator, notes }: GlbInput): Promise<Uint8Array<ArrayBuffer>> {
  const document = new Document()
  Object.assign(document.getRoot().getAsset(), { generator, extras: { title, ...notes } })
  const buffer = document.createBuffer()
  const scene = document.createScene(title)
  document.getRoot().setDefaultScene(scene)
  const materials = new Map<Role, Material>()
  const materialOf = (role: Role): Material => {
    const known = materials.get(role)
    if (known) return known
    const made = document
      .createMaterial(role)
      .setBaseColorFactor([...linear(roleColours[role]), 1])
      .setMetallicFactor(metallic.has(role) ? 0.8 : 0)
      .setRoughnessFactor(metallic.has(role) ? 0.5 : 0.95)
    materials.set(role, made)
    return made
  }
  const meshes = cutMeshes(zones, cut, { segments, cutPost })
  for (const zone of zones) {
    const mesh = meshes.get(zone.id)
    if (!mesh || mesh.indices.length === 0) continue
    const { positions, normals, indices } = mesh
    const vector = (name: string, array: Float32Array) =>
      document.createAccessor(name).setType('VEC3').setArray(new Float32Array(array)).setBuffer(buffer)
    const primitive = document
      .createPrimitive()
      .setAttribute('POSITION', vector(`${zone.id} positions`, positions))
      .setAttribute('NORMAL', vector(`${zone.id} normals`, normals))
      .setIndices(
        document
          .createAccessor(`${zone.id} triangles`)
          .setType('SCALAR')
          .setArray(positions.length / 3 > 65_534 ? new Uint32Array(indices) : Uint16Array.from(indices))
          .setBuffer(buffer),
      )
      .setMaterial(materialOf(zone.role))
    const node = document.createNode(nameOf(zone)).setMesh(document.createMesh(nameOf(zone)).addPrimitive(primitive))
    scene.addChild(node.setExtras({ zone: zone.id, role: zone.role, volume_m3: zone.volume.value }))
  }
  return new Uint8Array(await new WebIO().writeBinary(document))
}

/** Linear red, green and blue, 0 to 1, of an sRGB colour #rrggbb. Source: IEC 61966-2-1 (from memory). */
export function linear(colour: string): [number, number, number] {
  const channel = (from: number): number => {
    const value = Number.parseInt(colour.slice(from, from + 2), 16) / 255
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4
  }
  return [channel(1), channel(3), channel(5)]
}
