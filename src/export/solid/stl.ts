import type { PlainMesh } from './plainMesh.ts'

const headLength = 80
const triangleLength = 50

/**
 * A closed mesh as a binary STL file: 80 bytes of head, the number of triangles, then for each its normal and three corners as
 * little-endian floats and two bytes of nothing. The format has no units; `note` in the head says which are meant (ASCII).
 */
export function stlFile({ positions, indices }: PlainMesh, note: string): Uint8Array<ArrayBuffer> {
  const count = indices.length / 3
  const bytes = new Uint8Array(headLength + 4 + count * triangleLength)
  // A file that began with the word "solid" would be taken for the text form.
  bytes.set(
    new TextEncoder().encode(
      note
        .replace(/^solid/i, 'body')
        .replace(/[^ -~]/g, '?')
        .slice(0, headLength),
    ),
  )
  const view = new DataView(bytes.buffer)
  view.setUint32(headLength, count, true)
  for (let t = 0; t < count; t++) {
    const corners = [0, 1, 2].map((k) => cornerAt(positions, indices[3 * t + k] ?? 0)) as [Point, Point, Point]
    let at = headLength + 4 + t * triangleLength
    for (const value of [facing(corners), ...corners].flat()) {
      view.setFloat32(at, value, true)
      at += 4
    }
  }
  return bytes
}

type Point = readonly [number, number, number]
const cornerAt = (positions: Float32Array, vertex: number): Point => [
  positions[3 * vertex] ?? 0,
  positions[3 * vertex + 1] ?? 0,
  positions[3 * vertex + 2] ?? 0,
]

function facing([a, b, c]: readonly [Point, Point, Point]): Point {
  const u = [b[0] - a[0], b[1] - a[1], b[2] - a[2]] as const
  const v = [c[0] - a[0], c[1] - a[1], c[2] - a[2]] as const
  const n: Point = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]]
  const length = Math.hypot(...n)
  return length > 0 ? [n[0] / length, n[1] / length, n[2] / length] : [0, 0, 0]
}
