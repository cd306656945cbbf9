import type { Mesh } from '../model/solid.ts'
import { MeshWriter } from './meshWriter.ts'
import { type ConvexSolid, cross, normalise, type Point3, placedRings } from './placed.ts'

const rodSides = 20

/** Mesh of placed parts, whole. Rods are smooth round their length; boxes have crisp edges. */
export function placedMesh(solids: readonly ConvexSolid[]): Mesh {
  const writer = new MeshWriter(solids.length * rodSides * 6, solids.length * rodSides * 12)
  for (const solid of solids) {
    const { from, to } = placedRings(solid, rodSides)
    sides(writer, from, to, solid.kind === 'rod')
    face(writer, [...from].reverse())
    face(writer, to)
  }
  return writer.finish(writer.indexCount, [])
}

function sides(writer: MeshWriter, from: readonly Point3[], to: readonly Point3[], isSmooth: boolean): void {
  const middle = centre(from)
  from.forEach((a, i) => {
    const j = (i + 1) % from.length
    const b = from[j]
    const c = to[j]
    const d = to[i]
    if (!b || !c || !d) return
    const flat = normalise(cross(minus(b, a), minus(d, a)))
    const na = isSmooth ? normalise(minus(a, middle)) : flat
    const nb = isSmooth ? normalise(minus(b, middle)) : flat
    const base = writer.vertexCount
    writer.vertex(...a, ...na)
    writer.vertex(...b, ...nb)
    writer.vertex(...c, ...nb)
    writer.vertex(...d, ...na)
    writer.triangle(base, base + 1, base + 2, false)
    writer.triangle(base, base + 2, base + 3, false)
  })
}

function face(writer: MeshWriter, ring: readonly Point3[]): void {
  const [a, b, c] = ring
  if (!a || !b || !c) return
  const n = normalise(cross(minus(b, a), minus(c, a)))
  const base = writer.vertexCount
  for (const p of ring) writer.vertex(...p, ...n)
  for (let i = 2; i < ring.length; i++) writer.triangle(base, base + i - 1, base + i, false)
}

const minus = (a: Point3, b: Point3): Point3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
const centre = (ring: readonly Point3[]): Point3 => {
  const sum = ring.reduce<[number, number, number]>((s, p) => [s[0] + p[0], s[1] + p[1], s[2] + p[2]], [0, 0, 0])
  return [sum[0] / ring.length, sum[1] / ring.length, sum[2] / ring.length]
}
