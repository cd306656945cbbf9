import { derivePier } from '../../src/core/derive/derivePier.ts'
import { pierFrame } from '../../src/core/derive/pierFrame.ts'
import { pierZones } from '../../src/core/derive/pierZones.ts'
import { cutMeshes } from '../../src/core/geometry/cutMeshes.ts'
import type { Cut, Mesh } from '../../src/core/model/solid.ts'
import { loadFields } from '../../src/core/spec/pier/loads.ts'
import { radians } from '../../src/core/units/quantity.ts'
import { solidKit } from '../reference/bodies.ts'
import { bundled } from './bundled.ts'
import { benchExports } from './exportBench.ts'
import { benchPiers } from './piers.ts'
import { meshVolume, solidMeshes, solidMeshVolume } from './solidRival.ts'
import type * as SureBench from './sureBench.ts'
import { line, time } from './timing.ts'

/** Speed of one change, next to the same pier built by a general solid library in the same run on the same machine. */

const segments = 96
const cutAt = (facing: number): Cut => ({ open: radians(Math.PI / 2), facing: radians(facing) })
const options = { segments, cutPost: false }
const often = { warmUp: 300, runs: 400 }
const seldom = { warmUp: 6, runs: 24 }

const copied = (meshes: Iterable<Mesh>): number => {
  let bytes = 0
  for (const mesh of meshes) {
    for (const part of [mesh.positions, mesh.normals, mesh.indices, mesh.outline]) bytes += part.slice().byteLength
  }
  return bytes
}

const kit = await solidKit(segments)
console.log(`Node ${process.version}, ${segments} segments, sector of 90 degrees open, normals on both sides\n`)

for (const [name, spec] of Object.entries(benchPiers)) {
  const { zones } = derivePier(spec)
  const meshes = cutMeshes(zones, cutAt(0), options)
  const sum = (values: Iterable<number>): number => [...values].reduce((total, value) => total + value, 0)
  const theirs = solidMeshes(kit, spec, zones, cutAt(0))
  const counts = [sum([...meshes.values()].map((mesh) => mesh.indices.length / 3)), sum(theirs.map((mesh) => mesh.triVerts.length / 3))]
  const volumes = [sum([...meshes.values()].map(meshVolume)), sum(theirs.map(solidMeshVolume))]
  kit.free()
  const apart = Math.abs((volumes[0] ?? 0) / (volumes[1] ?? 1) - 1)
  if (!(apart < 2e-3)) throw new Error(`bench: the two do not build the same pier: ${volumes.join(' and ')} m3`)
  console.log(
    `${name}: ${zones.length} zones, ${counts[0]} triangles here, ${counts[1]} there, volumes ${(apart * 100).toFixed(3)} % apart`,
  )

  let turn = 0
  const nextCut = (): Cut => {
    turn = (turn + 0.01) % 6
    return cutAt(turn)
  }
  // A new document each time, as after a keystroke, so that nothing kept by identity helps.
  const nextSpec = () => ({ ...spec, hole: { ...spec.hole } })

  const derive = time(() => derivePier(nextSpec()), often)
  const loaded = time(() => derivePier({ ...nextSpec(), loads: { entered: null, estimate: loadFields.fields.estimate.first } }), often)
  const cut = time(() => cutMeshes(zones, nextCut(), options), often)
  const build = time(() => cutMeshes(pierZones(pierFrame(nextSpec())), nextCut(), options), often)
  const change = time(() => cutMeshes(derivePier(nextSpec()).zones, nextCut(), options), often)
  const rival = time(() => solidMeshes(kit, spec, zones, nextCut()), seldom, kit.free)
  const copy = time(() => copied(meshes.values()), often)

  console.log(line('  derive alone: zones, quantities, checks', derive))
  console.log(line('  the same with every wind case at the post', loaded, 'aim: under 2 ms'))
  console.log(line('  the cut alone: all meshes of known zones', cut, 'aim: under 1 ms'))
  console.log(line('  all zones + all meshes', build))
  console.log(line('  one full change: derive + all meshes', change, 'aim: under 1.5 ms'))
  console.log(line('  general solid library: all meshes', rival))
  console.log(line('  plain copy of the same buffers', copy))
  const ratio = (a: number, b: number): string => (a / b).toFixed(1)
  console.log(`  solid library / zones + meshes   ${ratio(rival.median, build.median)} times   (aim: at least 40)`)
  console.log(`  solid library / full change      ${ratio(rival.median, change.median)} times`)
  console.log(`  solid library / the cut alone    ${ratio(rival.median, cut.median)} times`)
  console.log(`  the cut alone / plain copy       ${ratio(cut.median, copy.median)} times`)

  console.log('  cost against segments (the cut alone):')
  const steps = [24, 48, 96, 192, 384]
  let before = 0
  for (const count of steps) {
    const { median } = time(() => cutMeshes(zones, nextCut(), { ...options, segments: count }), { warmUp: 60, runs: 200 })
    const growth = before > 0 ? `   ${ratio(median, before)} times the half` : ''
    console.log(
      `    ${String(count).padStart(4)}   ${median.toFixed(3)} ms   ${((median / count) * 1000).toFixed(2)} us a segment${growth}`,
    )
    before = median
  }
  console.log('')
}

await benchExports()

const { benchSure } = await bundled<typeof SureBench>('sureBench.ts')
benchSure()
