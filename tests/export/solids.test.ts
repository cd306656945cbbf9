// @vitest-environment jsdom
import fc from 'fast-check'
import Module from 'manifold-3d'
import { type Mesh as ThreeMesh, MeshPhongMaterial } from 'three'
import { ThreeMFLoader } from 'three/examples/jsm/loaders/3MFLoader.js'
import { STLLoader } from 'three/examples/jsm/loaders/STLLoader.js'
import { describe, expect, it } from 'vitest'
import { derivePier } from '../../src/core/derive/derivePier.ts'
import type { Mesh } from '../../src/core/model/solid.ts'
import type { PierResult } from '../../src/core/model/result.ts'
import type { Zone } from '../../src/core/model/zone.ts'
import { roleColours } from '../../src/export/roleColours.ts'
import { joinSolids, type JoinedSolid } from '../../src/export/solid/joinSolids.ts'
import { modelMeshes } from '../../src/export/solid/modelFrame.ts'
import { enclosedVolume, type PlainMesh, welded } from '../../src/export/solid/plainMesh.ts'
import { solidParts } from '../../src/export/solid/solidParts.ts'
import { stlFile } from '../../src/export/solid/stl.ts'
import { threeMfFile } from '../../src/export/solid/threeMf.ts'
import { anyPier } from '../anyPier.ts'
import { close } from '../close.ts'
import { unpairedEdges } from '../meshFacts.ts'
import { jobNamed, someJobs } from './someJobs.ts'

const wasm = await Module()
wasm.setup()

/** As the tests of the picture's meshes have it. */
const facts = ({ positions, indices }: PlainMesh): Mesh => ({
  positions,
  indices,
  normals: new Float32Array(positions.length),
  outsideCount: indices.length,
  outline: new Float32Array(),
})
const isClosed = (mesh: PlainMesh): boolean => unpairedEdges(facts(mesh)) === 0

const fillRoles = new Set(['concrete', 'dry-mix', 'flowable-fill', 'granular'])
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)
/** Closed form of all fill [m3], steel not taken off; and of one role net of steel, as it is ordered. */
const filled = (zones: readonly Zone[]): number => sum(zones.filter(({ role }) => fillRoles.has(role)).map((zone) => zone.volume.value))
const net = ({ quantities }: PierResult, role: string): number =>
  sum(quantities.filter((line) => line.role === role).map((line) => line.volume.value))

const jobs = someJobs.map(([name, { spec }]) => [name, derivePier(spec)] as const)
const drawn = fc
  .sample(anyPier, { numRuns: 40, seed: 31 })
  .map((spec, i) => [`drawn ${i + 1} ${spec.fill.kind}`, derivePier(spec)] as const)
const within = { abs: 0, rel: 1e-3 }

describe('[E4] the solid is closed and has the volume of the closed form', () => {
  it('asks for the fill of every kind', () => {
    expect(new Set([...jobs, ...drawn].map(([, { spec }]) => spec.fill.kind)).size).toBe(7)
  })

  it.each([...jobs, ...drawn])('%s: the fill alone, to a thousandth', (_, { zones }) => {
    const [solid, ...others] = joinSolids(wasm, solidParts(zones), { withPost: false, inOne: true })
    expect(others).toEqual([])
    expect(solid && isClosed(solid.mesh)).toBe(true)
    close(solid?.volume ?? 0, filled(zones), within)
    close(enclosedVolume(solid?.mesh as PlainMesh), filled(zones), within)
  })

  it.each([...jobs, ...drawn])('%s: each material net of steel, none in the place of another', (_, result) => {
    const parts = solidParts(result.zones)
    const solids = joinSolids(wasm, parts, { withPost: true, inOne: false })
    for (const { mesh, role, volume } of solids) {
      expect(isClosed(mesh), role).toBe(true)
      // Plates and bolts of a bracket run into each other, and are counted one by one.
      if (role === 'steel') expect(volume).toBeLessThanOrEqual(net(result, role))
      else close(volume, net(result, role), within, role)
    }
    const [whole] = joinSolids(wasm, parts, { withPost: true, inOne: true })
    expect(whole && isClosed(whole.mesh)).toBe(true)
    close(whole?.volume ?? 0, sum(solids.map(({ volume }) => volume)), { abs: 0, rel: 1e-6 }, 'all in one')
  })

  it('would see a hole, and a wrong volume', () => {
    const [solid] = joinSolids(wasm, solidParts(jobs[0]?.[1].zones ?? []), { withPost: false, inOne: true })
    const mesh = solid?.mesh as PlainMesh
    expect(isClosed({ ...mesh, indices: mesh.indices.subarray(3) })).toBe(false)
    expect(() => close((solid?.volume ?? 0) * 1.002, filled(jobs[0]?.[1].zones ?? []), within)).toThrow()
  })
})

const bodyOf = (solids: readonly JoinedSolid[], scale: 1 | 10): PlainMesh[] =>
  modelMeshes(
    solids.map(({ mesh }) => mesh),
    scale,
  )

describe('[E5] the files are read by others', () => {
  const result = derivePier(jobNamed('mixed').spec)
  const parts = solidParts(result.zones)

  it('STL: the same body in millimetres, standing on nought (read by three)', () => {
    const [mesh] = bodyOf(joinSolids(wasm, parts, { withPost: false, inOne: true }), 1)
    const bytes = stlFile(mesh as PlainMesh, 'Solid — pier, mm')
    expect(bytes.length).toBe(84 + (50 * (mesh?.indices.length ?? 0)) / 3)
    expect(new TextDecoder().decode(bytes.subarray(0, 5))).not.toBe('solid')
    const geometry = new STLLoader().parse(bytes.buffer)
    const positions = geometry.getAttribute('position').array as Float32Array
    const read = welded({ positions, indices: Uint32Array.from(positions.keys()).subarray(0, positions.length / 3) })
    expect(isClosed(read)).toBe(true)
    close(enclosedVolume(read) * 1e-9, filled(result.zones), within)
    geometry.computeBoundingBox()
    const { min, max } = geometry.boundingBox ?? {}
    close(min?.z ?? Number.NaN, 0, { abs: 1e-3, rel: 0 })
    close(max?.x ?? Number.NaN, 330.2, { abs: 0.5, rel: 0 })
    const normals = geometry.getAttribute('normal')
    expect(Math.hypot(normals.getX(0), normals.getY(0), normals.getZ(0))).toBeCloseTo(1, 5)
  })

  it('3MF: one body a material, at a tenth, named and coloured (read by three)', () => {
    const solids = joinSolids(wasm, parts, { withPost: true, inOne: false })
    const meshes = bodyOf(solids, 10)
    const file = threeMfFile(
      solids.map(({ role }, i) => ({ name: role, colour: roleColours[role], mesh: meshes[i] as PlainMesh })),
      { title: 'A & <b> "pier"', description: 'x', application: 'y' },
    )
    const group = new ThreeMFLoader().parse(file.buffer)
    const bodies: ThreeMesh[] = []
    group.traverse((node) => {
      if ('isMesh' in node) bodies.push(node as ThreeMesh)
    })
    expect(bodies).toHaveLength(solids.length)
    expect(solids.map(({ role }) => role).sort()).toEqual(['bar', 'concrete', 'wood'])
    for (const [i, body] of bodies.entries()) {
      const { array } = body.geometry.getAttribute('position')
      const index = body.geometry.getIndex()
      const mesh = welded({
        positions: Float32Array.from(array),
        indices: Uint32Array.from(index?.array ?? Array.from({ length: array.length / 3 }, (_, k) => k)),
      })
      expect(isClosed(mesh)).toBe(true)
      close(enclosedVolume(mesh) * 1e-6, net(result, solids[i]?.role ?? ''), within, solids[i]?.role)
      const material = Array.isArray(body.material) ? body.material[0] : body.material
      expect(material).toBeInstanceOf(MeshPhongMaterial)
      if (material instanceof MeshPhongMaterial) expect(`#${material.color.getHexString()}`).toBe(roleColours[solids[i]?.role ?? 'wood'])
    }
  })

  it('3MF: the same bodies give the same bytes', () => {
    const write = () =>
      threeMfFile(
        [{ name: 'a', colour: '#000000', mesh: bodyOf(joinSolids(wasm, parts, { withPost: false, inOne: true }), 1)[0] as PlainMesh }],
        { title: '', description: '', application: '' },
      )
    expect(Buffer.from(write()).equals(Buffer.from(write()))).toBe(true)
  })
})
