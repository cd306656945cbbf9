/** Triangles and nothing else: positions [n][3], indices anticlockwise seen from outside. */
export type PlainMesh = Readonly<{ positions: Float32Array; indices: Uint32Array }>

/**
 * The same triangles with one vertex a place, as solids need them. Vertices are one when every bit of their coordinates is;
 * triangles that lose an edge by it are dropped.
 */
export function welded({ positions, indices }: PlainMesh): PlainMesh {
  const places = new Map<string, number>()
  const kept: number[] = []
  const placeOf = new Uint32Array(positions.length / 3)
  for (let v = 0; v < placeOf.length; v++) {
    // Adding 0 makes one zero of both.
    const [x, y, z] = [0, 1, 2].map((k) => (positions[3 * v + k] ?? 0) + 0) as [number, number, number]
    const key = `${x},${y},${z}`
    let place = places.get(key)
    if (place === undefined) {
      place = places.size
      places.set(key, place)
      kept.push(x, y, z)
    }
    placeOf[v] = place
  }
  const triangles: number[] = []
  for (let t = 0; t < indices.length; t += 3) {
    const [a = 0, b = 0, c = 0] = [0, 1, 2].map((k) => placeOf[indices[t + k] ?? 0])
    if (a !== b && b !== c && c !== a) triangles.push(a, b, c)
  }
  return { positions: Float32Array.from(kept), indices: Uint32Array.from(triangles) }
}

/** Volume enclosed by a closed mesh, in the cube of its unit, by the divergence theorem; positive when faces point outward. */
export function enclosedVolume({ positions, indices }: PlainMesh): number {
  const at = (i: number, k: number): number => positions[3 * (indices[i] ?? 0) + k] ?? 0
  let six = 0
  for (let t = 0; t < indices.length; t += 3)
    six +=
      at(t, 0) * (at(t + 1, 1) * at(t + 2, 2) - at(t + 1, 2) * at(t + 2, 1)) +
      at(t, 1) * (at(t + 1, 2) * at(t + 2, 0) - at(t + 1, 0) * at(t + 2, 2)) +
      at(t, 2) * (at(t + 1, 0) * at(t + 2, 1) - at(t + 1, 1) * at(t + 2, 0))
  return six / 6
}
