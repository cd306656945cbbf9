import type { Mesh } from '../model/solid.ts'

/** Fills plain vertex and index arrays of known greatest size and trims them at the end. */
export class MeshWriter {
  private readonly positions: Float32Array
  private readonly normals: Float32Array
  private readonly indices: Uint32Array
  vertexCount = 0
  indexCount = 0

  constructor(mostVertices: number, mostIndices: number) {
    this.positions = new Float32Array(3 * mostVertices)
    this.normals = new Float32Array(3 * mostVertices)
    this.indices = new Uint32Array(mostIndices)
  }

  vertex(x: number, y: number, z: number, nx: number, ny: number, nz: number): void {
    const at = 3 * this.vertexCount++
    this.positions[at] = x
    this.positions[at + 1] = y
    this.positions[at + 2] = z
    this.normals[at] = nx
    this.normals[at + 1] = ny
    this.normals[at + 2] = nz
  }

  /** `isPoint` leaves out a triangle two of whose corners coincide. */
  triangle(a: number, b: number, c: number, isPoint: boolean): void {
    if (isPoint) return
    this.indices[this.indexCount] = a
    this.indices[this.indexCount + 1] = b
    this.indices[this.indexCount + 2] = c
    this.indexCount += 3
  }

  finish(outsideCount: number, outline: readonly number[]): Mesh {
    return {
      positions: this.positions.subarray(0, 3 * this.vertexCount),
      normals: this.normals.subarray(0, 3 * this.vertexCount),
      indices: this.indices.subarray(0, this.indexCount),
      outsideCount,
      outline: Float32Array.from(outline),
    }
  }
}
