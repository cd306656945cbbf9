import { validateBytes } from 'gltf-validator'
import type { Mesh as ThreeMesh, Object3D } from 'three'
import { GLTFLoader } from 'three/examples/jsm/loaders/GLTFLoader.js'
import { describe, expect, it } from 'vitest'
import { derivePier } from '../../src/core/derive/derivePier.ts'
import type { Cut } from '../../src/core/model/solid.ts'
import { radians } from '../../src/core/units/quantity.ts'
import { glbFile } from '../../src/export/solid/glb.ts'
import { enclosedVolume, welded } from '../../src/export/solid/plainMesh.ts'
import { close } from '../close.ts'
import { someJobs } from './someJobs.ts'

const whole: Cut = { open: radians(0), facing: radians(0) }
const cuts: readonly Cut[] = [whole, { open: radians(1.9), facing: radians(2.3) }, { open: radians(Math.PI), facing: radians(0) }]

const fileOf = (job: (typeof someJobs)[number][1], cut: Cut): Promise<Uint8Array<ArrayBuffer>> =>
  glbFile({
    zones: derivePier(job.spec).zones,
    cut,
    cutPost: false,
    nameOf: (zone) => zone.label,
    title: 'A "pier" <b>',
    generator: 'Pierglass 0',
    notes: { caution: 'Preliminary' },
  })

/** The validator of the format's own makers: gltf-validator, Khronos Group. */
const report = async (bytes: Uint8Array) =>
  (await validateBytes(bytes)) as Readonly<{
    issues: Readonly<{
      numErrors: number
      numWarnings: number
      numInfos: number
      messages: readonly Readonly<{ code: string; pointer?: string }>[]
    }>
  }>

describe('[E6] the glTF passes the Khronos validator', () => {
  it.each(someJobs.flatMap(([name, job]) => cuts.map((cut, i) => [name, ['whole', 'opened', 'halved'][i], job, cut] as const)))(
    '%s, %s',
    async (_, __, job, cut) => {
      const { issues } = await report(await fileOf(job, cut))
      expect({ ...issues, messages: issues.messages.slice(0, 5) }).toMatchObject({ numErrors: 0, numWarnings: 0, numInfos: 0 })
    },
  )

  it('and the validator would say if it were broken', async () => {
    const bytes = await fileOf((someJobs[0] as (typeof someJobs)[number])[1], whole)
    // Half of a position becomes no number.
    bytes.fill(0xff, bytes.length - 4000, bytes.length - 3000)
    expect((await report(bytes)).issues.numErrors).toBeGreaterThan(0)
  })
})

describe('[E7] the glTF holds the pier', () => {
  it.each(someJobs)('%s: every zone, closed, with its volume (read by three)', async (_, job) => {
    const { zones } = derivePier(job.spec)
    const bytes = await fileOf(job, whole)
    const { scene } = await new GLTFLoader().parseAsync(bytes.buffer, '')
    const nodes = new Map<string, Object3D>()
    scene.traverse((node) => {
      if (typeof node.userData.zone === 'string') nodes.set(node.userData.zone, node)
    })
    expect([...nodes.keys()].sort()).toEqual(zones.map(({ id }) => id).sort())
    for (const zone of zones) {
      const mesh = nodes.get(zone.id) as ThreeMesh
      const places = mesh.geometry.getAttribute('position')
      const positions = Float32Array.from({ length: 3 * places.count }, (_, i) => places.getComponent(Math.floor(i / 3), i % 3))
      const body = welded({ positions, indices: Uint32Array.from(mesh.geometry.getIndex()?.array ?? []) })
      // 128 sides lack 0.04 % of a circle; rods have 20 sides and lack 1.6 %.
      close(enclosedVolume(body), zone.volume.value, { abs: 1e-7, rel: zone.build === 'swept' ? 1e-3 : 0.02 }, zone.id)
      expect(mesh.userData.volume_m3).toBe(zone.volume.value)
    }
  })
})
