import type { PlainMesh } from './plainMesh.ts'

/** One part to so many: 1 for full size, 10 for a model of a tenth. */
export const modelScales = [1, 8, 10, 12, 16, 20] as const
export type ModelScale = (typeof modelScales)[number]

/**
 * Bodies as a maker of models wants them: millimetres, divided by `scale`, z up, standing on z = 0, the axis in the middle.
 * @param meshes metres, y up, one frame for all
 */
export function modelMeshes(meshes: readonly PlainMesh[], scale: ModelScale): PlainMesh[] {
  let lowest = Number.POSITIVE_INFINITY
  for (const { positions } of meshes) for (let i = 1; i < positions.length; i += 3) lowest = Math.min(lowest, positions[i] ?? 0)
  const perMetre = 1000 / scale
  return meshes.map(({ positions, indices }) => {
    const turned = new Float32Array(positions.length)
    for (let i = 0; i < positions.length; i += 3) {
      turned[i] = (positions[i] ?? 0) * perMetre
      turned[i + 1] = -(positions[i + 2] ?? 0) * perMetre
      turned[i + 2] = ((positions[i + 1] ?? 0) - lowest) * perMetre
    }
    return { positions: turned, indices }
  })
}
