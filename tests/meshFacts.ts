import type { Mesh } from '../src/core/model/solid.ts'

/** Facts of a mesh that tests ask about: enclosed volume, edges without a partner, whether every number is finite. */

type Triple = readonly [number, number, number]

const corner = (mesh: Mesh, at: number): Triple => {
  const v = 3 * (mesh.indices[at] ?? 0)
  return [mesh.positions[v] ?? 0, mesh.positions[v + 1] ?? 0, mesh.positions[v + 2] ?? 0]
}

/** Signed volume [m3] by the divergence theorem; positive when faces point outward. */
export function meshVolume(mesh: Mesh): number {
  let sum = 0
  for (let t = 0; t < mesh.indices.length; t += 3) {
    const [a, b, c] = [corner(mesh, t), corner(mesh, t + 1), corner(mesh, t + 2)]
    sum += a[0] * (b[1] * c[2] - b[2] * c[1]) - a[1] * (b[0] * c[2] - b[2] * c[0]) + a[2] * (b[0] * c[1] - b[1] * c[0])
  }
  return sum / 6
}

/** Area [m2] of the triangles from index `from` up to `to`. */
export function meshArea(mesh: Mesh, from = 0, to = mesh.indices.length): number {
  let sum = 0
  for (let t = from; t < to; t += 3) {
    const [a, b, c] = [corner(mesh, t), corner(mesh, t + 1), corner(mesh, t + 2)]
    const u: Triple = [b[0] - a[0], b[1] - a[1], b[2] - a[2]]
    const v: Triple = [c[0] - a[0], c[1] - a[1], c[2] - a[2]]
    sum += Math.hypot(u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]) / 2
  }
  return sum
}

/** Number of edges that are not passed exactly as often one way as the other; 0 for a closed, oriented mesh. */
export function unpairedEdges(mesh: Mesh): number {
  const ids = new Map<string, number>()
  const idOf = new Int32Array(mesh.positions.length / 3)
  for (let v = 0; v < idOf.length; v++) {
    const key = `${mesh.positions[3 * v]},${mesh.positions[3 * v + 1]},${mesh.positions[3 * v + 2]}`
    const id = ids.get(key) ?? ids.size
    ids.set(key, id)
    idOf[v] = id
  }
  const balance = new Map<number, number>()
  const span = ids.size
  for (let t = 0; t < mesh.indices.length; t += 3) {
    for (let k = 0; k < 3; k++) {
      const a = idOf[mesh.indices[t + k] ?? 0] ?? 0
      const b = idOf[mesh.indices[t + ((k + 1) % 3)] ?? 0] ?? 0
      if (a === b) continue
      const key = a < b ? a * span + b : b * span + a
      balance.set(key, (balance.get(key) ?? 0) + (a < b ? 1 : -1))
    }
  }
  let open = 0
  for (const sum of balance.values()) if (sum !== 0) open++
  return open
}

export const isAllFinite = (mesh: Mesh): boolean =>
  [mesh.positions, mesh.normals, mesh.outline].every((list) => list.every(Number.isFinite))
