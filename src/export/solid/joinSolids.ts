import type { Manifold, ManifoldToplevel } from 'manifold-3d'
import type { Role } from '../../core/model/solid.ts'
import type { PlainMesh } from './plainMesh.ts'
import type { SolidPart } from './solidParts.ts'

/** One closed body of one material, with its volume [m3]. */
export type JoinedSolid = Readonly<{ role: Role; mesh: PlainMesh; volume: number }>

/** What to make of the parts. */
export type JoinWish = Readonly<{
  /** False: the fill alone, open where the post stands, solid where steel lies. */
  withPost: boolean
  /** All in one body, as for a file that knows no materials. */
  inOne: boolean
}>

/**
 * Closed bodies from the parts of a pier, by Booleans of a general solid library: parts of one material are joined, and steel that
 * is shown is taken off what it lies in, so that no two bodies share space. Throws when a part is not closed (a broken invariant).
 */
export function joinSolids(wasm: ManifoldToplevel, parts: readonly SolidPart[], { withPost, inOne }: JoinWish): JoinedSolid[] {
  const made: { delete(): void }[] = []
  const keep = <T extends { delete(): void }>(thing: T): T => {
    made.push(thing)
    return thing
  }
  const bodyOf = ({ mesh }: SolidPart): Manifold =>
    keep(new wasm.Manifold(new wasm.Mesh({ numProp: 3, vertProperties: mesh.positions, triVerts: mesh.indices })))
  const union = (bodies: readonly Manifold[]): Manifold => keep(wasm.Manifold.union([...bodies]))
  try {
    const bodies = parts.map((part) => ({ part, body: bodyOf(part) }))
    const steel = union(bodies.filter(({ part }) => part.share === 'steel').map(({ body }) => body))
    const wanted = bodies.filter(({ part }) => withPost || part.share === 'fill')
    const roles = [...new Set(wanted.map(({ part }) => part.role))]
    const solids = roles.map((role) => {
      const own = wanted.filter(({ part }) => part.role === role)
      const joined = union(own.map(({ body }) => body))
      const keepsSteel = !withPost || own.some(({ part }) => part.share === 'steel')
      return { role, body: keepsSteel ? joined : keep(joined.subtract(steel)) }
    })
    const [first] = solids
    const asked = inOne && first ? [{ role: first.role, body: union(solids.map(({ body }) => body)) }] : solids
    return asked.flatMap(({ role, body }) => (body.isEmpty() ? [] : [{ role, mesh: plain(body), volume: body.volume() }]))
  } finally {
    // The library's memory is not collected.
    for (const thing of made) thing.delete()
  }
}

function plain(body: Manifold): PlainMesh {
  const { numProp, vertProperties, triVerts } = body.getMesh()
  const count = vertProperties.length / numProp
  const positions = new Float32Array(3 * count)
  for (let v = 0; v < count; v++) for (let k = 0; k < 3; k++) positions[3 * v + k] = vertProperties[numProp * v + k] ?? 0
  return { positions, indices: Uint32Array.from(triVerts) }
}
