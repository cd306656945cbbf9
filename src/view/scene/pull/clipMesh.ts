import type { Mesh } from '../../../core/model/solid.ts'

/** A plane or cone: positive on the side that is kept. Read at (x, y, z) in metres. */
export type ClipSide = (x: number, y: number, z: number) => number

export const other =
  (side: ClipSide): ClipSide =>
  (x, y, z) =>
    -side(x, y, z)

/** The pieces of segments, [n][2][3] metres, that lie where `side` is positive. */
export function clipSegments(segments: Float32Array, side: ClipSide): Float32Array {
  const out: number[] = []
  for (let i = 0; i + 5 < segments.length; i += 6) {
    const [ax, ay, az, bx, by, bz] = segments.subarray(i, i + 6) as unknown as [number, number, number, number, number, number]
    const fa = side(ax, ay, az)
    const fb = side(bx, by, bz)
    if (fa < 0 && fb < 0) continue
    const t = fa / (fa - fb)
    const [mx, my, mz] = [ax + (bx - ax) * t, ay + (by - ay) * t, az + (bz - az) * t]
    if (fa >= 0 && fb >= 0) out.push(ax, ay, az, bx, by, bz)
    else if (fa >= 0) out.push(ax, ay, az, mx, my, mz)
    else out.push(mx, my, mz, bx, by, bz)
  }
  return Float32Array.from(out)
}

/** The part of a mesh where `side` is positive, open where it was cut: `capped` closes it. */
export function clipMesh(mesh: Mesh, side: ClipSide): Mesh {
  const { positions: p, normals: n, indices } = mesh
  const at: number[] = []
  const normals: number[] = []
  const kept = new Int32Array(p.length / 3).fill(-1)
  const value = Float64Array.from(kept, (_, i) => side(p[3 * i] ?? 0, p[3 * i + 1] ?? 0, p[3 * i + 2] ?? 0))
  const vertex = (i: number): number => {
    const known = kept[i] ?? -1
    if (known >= 0) return known
    for (let k = 0; k < 3; k++) {
      at.push(p[3 * i + k] ?? 0)
      normals.push(n[3 * i + k] ?? 0)
    }
    kept[i] = at.length / 3 - 1
    return at.length / 3 - 1
  }
  const between = (i: number, j: number): number => {
    const fi = value[i] ?? 0
    const t = fi / (fi - (value[j] ?? 0))
    for (let k = 0; k < 3; k++) {
      at.push((p[3 * i + k] ?? 0) * (1 - t) + (p[3 * j + k] ?? 0) * t)
      normals.push((n[3 * i + k] ?? 0) * (1 - t) + (n[3 * j + k] ?? 0) * t)
    }
    return at.length / 3 - 1
  }
  const clipped = (from: number, to: number): number[] => {
    const out: number[] = []
    for (let i = from; i < to; i += 3) {
      const ring: number[] = []
      for (let k = 0; k < 3; k++) {
        const a = indices[i + k] ?? 0
        const b = indices[i + ((k + 1) % 3)] ?? 0
        const isIn = (value[a] ?? 0) >= 0
        if (isIn) ring.push(vertex(a))
        if (isIn !== (value[b] ?? 0) >= 0) ring.push(between(a, b))
      }
      for (let k = 2; k < ring.length; k++) out.push(ring[0] ?? 0, ring[k - 1] ?? 0, ring[k] ?? 0)
    }
    return out
  }
  const outside = clipped(0, mesh.outsideCount)
  const section = clipped(mesh.outsideCount, indices.length)
  return {
    positions: Float32Array.from(at),
    normals: Float32Array.from(normals),
    indices: Uint32Array.from([...outside, ...section]),
    outsideCount: outside.length,
    outline: clipSegments(mesh.outline, side),
  }
}

const joined = (a: Float32Array, b: ArrayLike<number>): Float32Array => {
  const out = new Float32Array(a.length + b.length)
  out.set(a)
  out.set(b, a.length)
  return out
}

/** Two meshes as one. */
export function joinMeshes(a: Mesh, b: Mesh): Mesh {
  const shift = a.positions.length / 3
  const moved = Array.from(b.indices, (i) => i + shift)
  return {
    positions: joined(a.positions, b.positions),
    normals: joined(a.normals, b.normals),
    indices: Uint32Array.from([
      ...a.indices.subarray(0, a.outsideCount),
      ...moved.slice(0, b.outsideCount),
      ...a.indices.subarray(a.outsideCount),
      ...moved.slice(b.outsideCount),
    ]),
    outsideCount: a.outsideCount + b.outsideCount,
    outline: joined(a.outline, b.outline),
  }
}
