import type { ManifoldToplevel } from 'manifold-3d'
import { roleColours } from '../roleColours.ts'
import { joinSolids } from './joinSolids.ts'
import { modelMeshes } from './modelFrame.ts'
import type { SolidAsk } from './solidAsk.ts'
import { stlFile } from './stl.ts'
import { threeMfFile } from './threeMf.ts'

/** The file asked for: one body as STL, or one for each material as 3MF. Throws when there is nothing to make. */
export function solidFile(wasm: ManifoldToplevel, { format, parts, withPost, scale, words, names }: SolidAsk): Uint8Array<ArrayBuffer> {
  const solids = joinSolids(wasm, parts, { withPost, inOne: format === 'stl' })
  const meshes = modelMeshes(
    solids.map(({ mesh }) => mesh),
    scale,
  )
  const [first] = meshes
  if (!first) throw new Error('solidFile: the pier has no solid part')
  if (format === 'stl') return stlFile(first, words.description)
  const bodies = meshes.flatMap((mesh, i) => {
    const role = solids[i]?.role
    return role ? [{ name: names[role], colour: roleColours[role], mesh }] : []
  })
  return threeMfFile(bodies, words)
}
